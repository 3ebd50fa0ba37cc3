package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Writes the demo season: reads the hand-written folder {@code place} and writes {@code trees} and {@code season}
 * beside it. The seed is fixed, so two runs write the same bytes; the files are checked in and a test compares them.
 */
public final class SeasonWriter {
    static final LocalDate FIRST_DAY = LocalDate.of(2026, 4, 20);
    static final LocalDate LAST_DAY = LocalDate.of(2026, 8, 21);
    private static final Set<LocalDate> HOLIDAYS = Set.of(LocalDate.of(2026, 5, 25), LocalDate.of(2026, 7, 3));
    private static final long SEED = 20260420;

    private final Dice dice = new Dice(SEED);
    private final SeasonBook book = new SeasonBook();
    private final Map<String, StockRoom> depots = new LinkedHashMap<>();
    private final List<CrewSeason> crews = new ArrayList<>();

    private SeasonWriter() {}

    /** Takes the demo-data folder and, if files should go elsewhere, the folder to write to. */
    public static void main(String... arguments) throws IOException {
        Path demoData = Path.of(arguments.length > 0 ? arguments[0] : "demo-data");
        write(demoData, arguments.length > 1 ? Path.of(arguments[1]) : demoData);
    }

    /** Reads the place from one folder and writes trees and season into another. */
    public static void write(Path demoData, Path target) throws IOException {
        new SeasonWriter().run(Place.read(demoData), target);
    }

    /** The week of the season, 1 for the first. */
    static int week(LocalDate day) {
        return (int) ChronoUnit.WEEKS.between(FIRST_DAY, day) + 1;
    }

    /** How many bands a crew puts up on a day: more at the start, none in the last two weeks. */
    static int fitsOn(LocalDate day, Dice dice) {
        int week = week(day);
        return week <= 2 ? dice.between(2, 4) : week <= 14 ? dice.between(1, 3) : week <= 16 ? 1 : 0;
    }

    private void run(Place place, Path target) throws IOException {
        List<Stand.Tree> trees = Stand.grow(place, dice);
        writeInventories(trees, target.resolve("trees"));
        for (Place.Depot depot : place.depots()) {
            depots.put(depot.depotId(), new StockRoom(depot, place, dice, book));
        }
        for (Place.Crew crew : place.crews()) {
            List<Stand.Tree> own = trees.stream()
                    .filter(tree -> tree.crewId().equals(crew.crewId()))
                    .toList();
            crews.add(new CrewSeason(crew, own, depot(crew.depotId()), dice, book));
        }
        for (LocalDate day = FIRST_DAY; !day.isAfter(LAST_DAY); day = day.plusDays(1)) {
            work(place, day);
        }
        Slips.write(book);
        book.write(target.resolve("season"));
    }

    private static void writeInventories(List<Stand.Tree> trees, Path folder) throws IOException {
        CsvTable corrections = new CsvTable("siteId,tag,species,girth,dbh,stored,happenedAt,why");
        for (Inventory inventory : Inventory.values()) {
            inventory.write(trees, corrections, folder);
        }
        corrections.write(folder.resolve("measured-again.csv"));
    }

    private StockRoom depot(String depotId) {
        StockRoom depot = depots.get(depotId);
        if (depot == null) {
            throw new IllegalStateException("crews.csv names depot " + depotId + ", depots.csv does not.");
        }
        return depot;
    }

    private void work(Place place, LocalDate day) {
        int week = week(day);
        if (day.getDayOfWeek() == DayOfWeek.MONDAY && week % 2 == 1) {
            depots.values()
                    .forEach(depot ->
                            depot.restock("LOT-26" + (char) ('A' + week / 2), day.minusDays(3) + "T14:30:00Z"));
        }
        boolean workday = day.getDayOfWeek().getValue() <= 5 && !HOLIDAYS.contains(day);
        if (workday) {
            crews.forEach(crew -> crew.work(day, strayTree(crew, day)));
        }
        if (day.getDayOfWeek() == DayOfWeek.FRIDAY) {
            crews.forEach(crew -> crew.handBack(day));
            if (week % 2 == 0) {
                disposeOf(place, week, day);
            }
        }
    }

    private Stand.@Nullable Tree strayTree(CrewSeason crew, LocalDate day) {
        if (!day.equals(Mistakes.SECOND_BAND) || !crew.crewId().equals(Mistakes.SECOND_BAND_CREW)) {
            return null;
        }
        return crews.getFirst().bands.stream()
                .filter(band -> band.tree.siteId().equals(Mistakes.SECOND_BAND_SITE))
                .reduce((first, second) -> second)
                .orElseThrow()
                .tree;
    }

    /** Every second Friday the bags of the two weeks before go away; the last ones stay in the yards. */
    private void disposeOf(Place place, int week, LocalDate day) {
        for (Disposal disposal : Disposal.of(place, book, week)) {
            book.loads.add(
                    book.next("LOAD", 3),
                    disposal.bagIds(),
                    "TRUCK-" + disposal.truck(),
                    disposal.by(),
                    day + "T18:30:00Z");
        }
    }
}

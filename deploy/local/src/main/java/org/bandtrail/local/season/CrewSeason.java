package org.bandtrail.local.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One crew's season, a working day at a time: hand out, fit, look, take down, hand back. */
final class CrewSeason {
    private static final int TEARDOWNS_A_DAY = 6;

    /** From this day bands come down as soon as they have been up this long, so that few are left at the end. */
    private static final LocalDate CLEARING_FROM = LocalDate.of(2026, 8, 10);

    private static final int CLEARING_AFTER_DAYS = 21;

    final List<BandUp> bands = new ArrayList<>();
    private final Place.Crew crew;
    private final KitBook kits;
    private final Fitting fitting;
    private final Visiting visiting;
    private final Dice dice;
    private final SeasonBook book;
    private @Nullable Kit kit;

    CrewSeason(Place.Crew crew, List<Stand.Tree> trees, StockRoom depot, Dice dice, SeasonBook book) {
        this.crew = crew;
        this.kits = new KitBook(crew, depot, dice, book);
        this.fitting = new Fitting(crew, trees, dice, book);
        this.visiting = new Visiting(crew, fitting, dice, book);
        this.dice = dice;
        this.book = book;
    }

    String crewId() {
        return crew.crewId();
    }

    /** Works one day. */
    void work(LocalDate date, Stand.@Nullable Tree strayTree) {
        WorkDay day = new WorkDay(date, crew.crewId(), dice);
        Kit today = morning(date);
        for (Stand.Tree tree : fitting.next(date, SeasonWriter.fitsOn(date, dice))) {
            bands.add(fitting.fit(tree, day, today));
        }
        if (strayTree != null) {
            bands.add(fitting.fit(strayTree, day, today));
        }
        BandUp bird = day.is(Mistakes.BIRD, Mistakes.BIRD_CREW) ? bands.getFirst() : null;
        for (BandUp band : List.copyOf(bands)) {
            if (band == bird || band.isDue(date)) {
                visiting.visit(band, day, today);
            }
            if (band == bird) {
                WildlifeFind.write(book, band.bandId);
            }
        }
        takeDown(day, today, bird);
    }

    private Kit morning(LocalDate date) {
        if (kit == null) {
            kit = kits.open(
                    crew.people().get(SeasonWriter.week(date) % crew.people().size()), date);
        } else {
            kits.topUp(kit, date);
        }
        return kit;
    }

    /** Hands the week's kit back, unless it is one of those still out at the end. */
    void handBack(LocalDate date) {
        boolean stillOut = Mistakes.STILL_OUT.containsKey(crew.crewId()) && !date.isBefore(SeasonWriter.LAST_DAY);
        if (kit != null && !stillOut) {
            kits.close(kit, date);
        }
        kit = null;
    }

    private void takeDown(WorkDay day, Kit today, @Nullable BandUp bird) {
        int done = 0;
        for (BandUp band : List.copyOf(bands)) {
            boolean stray = !band.tree.crewId().equals(crew.crewId()) && band.fittedOn.isBefore(day.date.minusDays(8));
            if (band == bird || stray || (done < TEARDOWNS_A_DAY && isTime(band, day.date))) {
                takeDown(band, day, today);
                done++;
            }
        }
    }

    private static boolean isTime(BandUp band, LocalDate day) {
        boolean clearing = !day.isBefore(CLEARING_FROM)
                && !band.gone
                && band.fittedOn.isBefore(day.minusDays(CLEARING_AFTER_DAYS));
        return clearing || band.shouldComeDown(day);
    }

    private void takeDown(BandUp band, WorkDay day, Kit today) {
        boolean reuse = !band.guardOpen && day.date.getDayOfWeek() != DayOfWeek.FRIDAY && dice.chance(450);
        book.bagsFilled.add(day.bagId());
        book.teardowns.add(
                book.next("T", 4),
                band.bandId,
                crew.crewId(),
                today.holder,
                day.bagId(),
                reuse ? "reuse" : "bag",
                "bag",
                day.after(dice.between(4, 8)),
                day.sentAt());
        if (reuse) {
            today.layAside(band.mesh, band.meshMaterial);
        }
        bands.remove(band);
        fitting.free(band.tree, day.date);
    }
}

package org.bandtrail.local.season;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** A crew looking at its bands: what it reads, what it finds, what it replaces. */
final class Visiting {
    private static final double DISPERSION = 0.8;
    private static final int REPLACE_FROM_PERCENT = 65;
    private static final int UNREAD_PERMILLE = 26;

    /** Pins are put back with the new strip unless they have rusted. */
    private static final int NEW_PINS_PERMILLE = 150;

    /** With less than this on every reel of the kit, a covered strip waits for the next round. */
    private static final long LONGEST_STRIP_MM = 2_300;

    private final Place.Crew crew;
    private final Fitting fitting;
    private final Dice dice;
    private final SeasonBook book;

    Visiting(Place.Crew crew, Fitting fitting, Dice dice, SeasonBook book) {
        this.crew = crew;
        this.fitting = fitting;
        this.dice = dice;
        this.book = book;
    }

    /** One look at one band. */
    void visit(BandUp band, WorkDay day, Kit kit) {
        String visitId = book.next("V", 5);
        String at = day.after(dice.between(2, 5));
        int unread = dice.between(1, 1000);
        if (unread <= UNREAD_PERMILLE) {
            band.gone = unread == 1;
            String answer = band.gone ? "band-missing" : unread <= 12 ? "not-found" : "not-read";
            write(new Sight(visitId, band.bandId, other(kit), answer, "", List.of("", "", "", "", ""), ""), at, day);
        } else {
            read(band, visitId, at, day, kit);
        }
    }

    private void read(BandUp band, String visitId, String at, WorkDay day, Kit kit) {
        List<Object> counts = catches(band, day, Math.max(1, ChronoUnit.DAYS.between(band.lastVisit, day.date)));
        band.lastVisit = day.date;
        int saturation = band.saturationPercent(day.date);
        String guard = guard(band, day);
        boolean covered = saturation >= REPLACE_FROM_PERCENT || (saturation >= 50 && dice.chance(250));
        boolean tape = covered && kit.longest(Kit.TAPE) >= LONGEST_STRIP_MM;
        boolean mesh = band.guardOpen && !day.is(Mistakes.GUARD, Mistakes.GUARD_CREW) && !guard.equals("touching");
        String person = tape || mesh ? kit.holder : other(kit);
        write(new Sight(visitId, band.bandId, person, "read", "" + saturation, counts, guard), at, day);
        if (dice.chance(1)) {
            book.visits(at).repeatLast();
        }
        if (dice.chance(4)) {
            book.bycatch.add(visitId, dice.chance(500) ? "bumblebee" : "ground beetle", "no", "noted", "", "");
        }
        if (tape || mesh) {
            replace(band, visitId, tape, mesh, day, kit);
        }
    }

    /** What the row of a visit says, cell by cell; counts by stage in the order of the columns. */
    private record Sight(
            String visitId,
            String bandId,
            String person,
            String answer,
            String saturation,
            List<Object> counts,
            String guard) {}

    private void write(Sight sight, String at, WorkDay day) {
        List<Object> cells = new ArrayList<>(List.of(sight.visitId, sight.bandId, crew.crewId(), sight.person));
        cells.add(sight.answer);
        cells.add(sight.saturation);
        cells.addAll(sight.counts);
        cells.addAll(List.of(sight.guard, at, day.sentAt()));
        book.visits(at).add(cells.toArray());
    }

    /** A round is shared: who does not carry the kit reads every second band. */
    private String other(Kit kit) {
        return dice.chance(500)
                ? kit.holder
                : crew.people().get(dice.between(0, crew.people().size() - 1));
    }

    private List<Object> catches(BandUp band, WorkDay day, long days) {
        double open = 1 - 0.8 * band.saturationPercent(day.date) / 100.0;
        List<Object> counts = new ArrayList<>();
        int sum = 0;
        for (Phenology stage : Phenology.values()) {
            double mean = stage.perDay(day.date) * band.tree.liking() * days * open;
            int count = dice.count(mean, DISPERSION);
            counts.add(count);
            sum += count;
        }
        band.stick(sum);
        return counts;
    }

    private String guard(BandUp band, WorkDay day) {
        if (band.guardOpen) {
            return "gap";
        }
        boolean planned = day.is(Mistakes.GUARD, Mistakes.GUARD_CREW) && !guardFailed;
        guardFailed |= planned;
        int wear = dice.between(1, 1000);
        band.guardOpen = planned || wear <= 9;
        return planned ? "missing" : wear <= 9 ? "gap" : wear <= 22 ? "touching" : "sound";
    }

    private boolean guardFailed;

    private void replace(BandUp band, String visitId, boolean tape, boolean mesh, WorkDay day, Kit kit) {
        String[] cells = {"", "", "", "", ""};
        if (tape) {
            CutLength length = Fitting.tapeFor(band.tree, crew, dice);
            Held reel = Fitting.mustHave(kit.reelFor(Kit.TAPE, length.mm()), Kit.TAPE, length.mm());
            reel.cut(length.mm());
            band.renew(length.mm(), day.date);
            cells[0] = reel.reelId;
            cells[1] = length.text();
        }
        if (mesh) {
            Fitting.Cut cut = fitting.cutMesh(band.tree, band.meshMaterial, kit);
            band.mesh = cut.piece();
            band.meshMaterial = cut.material();
            band.guardOpen = false;
            cells[2] = cut.piece().reelId();
            cells[3] = cut.text();
            cells[4] = "bag";
        }
        boolean newPins = mesh || dice.chance(NEW_PINS_PERMILLE);
        long pieces = newPins ? Fitting.piecesFor(band.tree) : 0;
        book.bagsFilled.add(day.bagId());
        book.replacements.add(
                visitId,
                cells[0],
                cells[1],
                cells[2],
                cells[3],
                cells[4],
                newPins ? kit.usePins(pieces) : "",
                newPins ? pieces : "",
                day.bagId());
    }
}

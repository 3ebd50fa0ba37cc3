package org.bandtrail.local.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** A band on a tree while the season is being simulated: its pieces, what sticks to it, when it was last seen. */
final class BandUp {
    private static final double INSECTS_PER_METRE_TO_COVER = 62;
    private static final double DUST_PERCENT_A_DAY = 0.8;

    final String bandId;
    final Stand.Tree tree;
    final LocalDate fittedOn;
    final int lifeDays;
    Kit.CutPiece mesh;
    String meshMaterial;
    LocalDate lastVisit;
    boolean gone;
    boolean guardOpen;
    private long tapeMm;
    private LocalDate tapeSince;
    private double stuck;

    BandUp(
            String bandId,
            Stand.Tree tree,
            LocalDate fittedOn,
            int lifeDays,
            long tapeMm,
            Kit.CutPiece mesh,
            String kind) {
        this.bandId = bandId;
        this.tree = tree;
        this.fittedOn = fittedOn;
        this.lifeDays = lifeDays;
        this.mesh = mesh;
        this.meshMaterial = kind;
        this.lastVisit = fittedOn;
        this.tapeMm = tapeMm;
        this.tapeSince = fittedOn;
    }

    /** Adds what was found on this visit. */
    void stick(int insects) {
        stuck += insects;
    }

    /** How much of the strip is covered, in whole per cent: insects overlap (so it levels off) and dust adds. */
    int saturationPercent(LocalDate day) {
        double cover = 1 - StrictMath.exp(-stuck / (INSECTS_PER_METRE_TO_COVER * tapeMm / 1000));
        double dust = DUST_PERCENT_A_DAY * ChronoUnit.DAYS.between(tapeSince, day);
        return (int) Math.min(100, Math.round(100 * cover + dust));
    }

    /** A fresh strip: nothing sticks to it yet. */
    void renew(long newTapeMm, LocalDate day) {
        tapeMm = newTapeMm;
        tapeSince = day;
        stuck = 0;
    }

    /** Two days after the last look, so that an animal is not left waiting. */
    boolean isDue(LocalDate day) {
        return !gone && ChronoUnit.DAYS.between(lastVisit, day) >= 2;
    }

    boolean shouldComeDown(LocalDate day) {
        return !gone && ChronoUnit.DAYS.between(fittedOn, day) >= lifeDays;
    }
}

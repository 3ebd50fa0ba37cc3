package org.bandtrail.local.season;

import java.time.LocalDate;

/**
 * How many spotted lanternflies (EPPO LYCMDE) an average band meets per day, by stage and date, in the invented season.
 * Each stage rises and falls as a bell round its peak; order and spacing follow the field onsets of Liu 2020
 * (Environmental Entomology 49:1171-1184: first instar, second, third, fourth, adult), dates and heights are invented.
 */
enum Phenology {
    FIRST("instar-1", 140, 12, 3.0),
    SECOND("instar-2", 156, 11, 2.7),
    THIRD("instar-3", 171, 11, 2.1),
    FOURTH("instar-4", 191, 13, 1.7),
    ADULT("adult", 222, 15, 2.6);

    private final String stage;
    private final int peakDayOfYear;
    private final double spreadDays;
    private final double peakPerDay;

    Phenology(String stage, int peakDayOfYear, double spreadDays, double peakPerDay) {
        this.stage = stage;
        this.peakDayOfYear = peakDayOfYear;
        this.spreadDays = spreadDays;
        this.peakPerDay = peakPerDay;
    }

    /** The stage's name, in the visits files and in what inspections is told. */
    String stage() {
        return stage;
    }

    /** Expected insects per band and day on this date. */
    double perDay(LocalDate date) {
        double z = (date.getDayOfYear() - peakDayOfYear) / spreadDays;
        return peakPerDay * StrictMath.exp(-z * z / 2);
    }
}

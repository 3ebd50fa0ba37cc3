package org.bandtrail.inspections.catchrates;

import java.util.Collection;

/**
 * Insects per band-day: F / (T x D) of trap surveys, here for unequal exposure sum(catch) / sum(band-days). Source of
 * the definition: FAO/IAEA, Trapping guidelines for area-wide fruit fly programmes (2003), "flies per trap per day".
 *
 * @param insects F, counted on bands that were read, 0 or more
 * @param bandDays sum of days these bands hung since they were last read or renewed, above 0
 * @param lowerBound true if a counted band was full: the true rate is at least this
 * @param perBandDay the rate
 * @param low lower end of the interval, per band-day
 * @param high upper end of the interval, per band-day
 */
public record CatchRate(long insects, double bandDays, boolean lowerBound, double perBandDay, double low, double high) {
    private static final double CONFIDENCE = 0.95;

    /**
     * What one reading adds.
     *
     * @param read false leaves the reading out of numerator and denominator
     * @param insects counted, 0 or more
     * @param days the band hung unread, above 0
     * @param full true if it was too full to catch on
     */
    public record Reading(boolean read, long insects, double days, boolean full) {
        public Reading {
            if (insects < 0) {
                throw new IllegalArgumentException("A catch of [%d] is less than none.".formatted(insects));
            }
            if (!(days > 0) || Double.isInfinite(days)) {
                throw new IllegalArgumentException(
                        "A band that hung for [%s] days says nothing about a day.".formatted(days));
            }
        }
    }

    /**
     * The rate over these readings with the exact 95 percent interval.
     *
     * @throws IllegalArgumentException if no band was read
     */
    public static CatchRate of(Collection<Reading> readings) {
        long insects = 0;
        double days = 0;
        boolean full = false;
        for (Reading reading : readings) {
            if (reading.read()) {
                insects += reading.insects();
                days += reading.days();
                full |= reading.full();
            }
        }
        if (!(days > 0)) {
            throw new IllegalArgumentException(
                    "None of [%d] visits read a band, so there is no rate.".formatted(readings.size()));
        }
        PoissonInterval interval = PoissonInterval.of(insects, CONFIDENCE);
        return new CatchRate(insects, days, full, insects / days, interval.low() / days, interval.high() / days);
    }
}

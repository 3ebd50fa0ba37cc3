package org.bandtrail.supplystock.items;

/**
 * How an item is supplied.
 *
 * @param leadTimeDays mean time from order to shelf, days, 0 or more
 * @param leadTimeSdDays its standard deviation, days, 0 or more
 * @param serviceLevelPermille wanted chance of not running out during a lead time, per mille, 500 to 999
 */
public record Supply(int leadTimeDays, int leadTimeSdDays, int serviceLevelPermille) {
    /** Two weeks, three days, 95 %: common practice, no source. Every item should get its own. */
    public static final Supply USUAL = new Supply(14, 3, 950);
}

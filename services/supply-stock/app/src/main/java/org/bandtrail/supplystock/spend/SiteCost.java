package org.bandtrail.supplystock.spend;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.bandwork.SiteWork;
import org.jspecify.annotations.Nullable;

/**
 * What a site cost beside the work done there, in the same months. The three ratios are in major units of the currency,
 * rounded half up to two digits more than its smallest unit has, and null where there is nothing to divide by.
 *
 * @param siteId null for all sites together
 * @param totalMinor charged to the site, minor units
 * @param bandDays days that bands hung, added up over the bands, rounded down
 * @param insects insects counted; where {@code lowerBounds} visits found the band full, the true number is higher
 * @param perTree cost of one tree
 * @param perBandDay cost of one band for one day
 * @param perThousandInsects cost of a thousand insects caught
 */
public record SiteCost(
        @Nullable String siteId,
        String currency,
        long totalMinor,
        long trees,
        long bands,
        long bandDays,
        long insects,
        long lowerBounds,
        @Nullable BigDecimal perTree,
        @Nullable BigDecimal perBandDay,
        @Nullable BigDecimal perThousandInsects) {
    private static final int MORE_DIGITS = 2;
    private static final long THOUSAND = 1000;

    static SiteCost of(@Nullable String siteId, Money total, SiteWork work) {
        return new SiteCost(
                siteId,
                total.currency(),
                total.minor(),
                work.trees(),
                work.bands(),
                work.bandSeconds() / SiteWork.DAY,
                work.insects(),
                work.lowerBounds(),
                ratio(total, 1, work.trees()),
                ratio(total, SiteWork.DAY, work.bandSeconds()),
                ratio(total, THOUSAND, work.insects()));
    }

    /** total x times / among, exactly, then rounded once. */
    private static @Nullable BigDecimal ratio(Money total, long times, long among) {
        if (among == 0) {
            return null;
        }
        BigInteger minor = BigInteger.valueOf(total.minor()).multiply(BigInteger.valueOf(times));
        int digits = total.minorDigits();
        return new BigDecimal(minor, digits)
                .divide(BigDecimal.valueOf(among), digits + MORE_DIGITS, RoundingMode.HALF_UP);
    }
}

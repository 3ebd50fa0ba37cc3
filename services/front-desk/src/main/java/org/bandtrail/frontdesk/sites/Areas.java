package org.bandtrail.frontdesk.sites;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Areas in words: hectares, or acres of 4,046.8564224 square metres (international acre, exact). */
public final class Areas {
    private static final BigDecimal DM2_PER_HECTARE = BigDecimal.valueOf(1_000_000);
    private static final BigDecimal DM2_PER_ACRE = new BigDecimal("404685.64224");

    private Areas() {}

    /** For example {@code 0.94 ha} or {@code 2.33 acres}; a dash where nothing is known. */
    public static String words(@Nullable Long dm2, boolean metric) {
        if (dm2 == null) {
            return "–";
        }
        BigDecimal value =
                BigDecimal.valueOf(dm2).divide(metric ? DM2_PER_HECTARE : DM2_PER_ACRE, 2, RoundingMode.HALF_UP);
        return value.toPlainString() + (metric ? " ha" : " acres");
    }

    /** The stored area, for titles. */
    public static String stored(@Nullable Long dm2) {
        return dm2 == null ? "not drawn" : BigDecimal.valueOf(dm2, 2).toPlainString() + " m² stored";
    }
}

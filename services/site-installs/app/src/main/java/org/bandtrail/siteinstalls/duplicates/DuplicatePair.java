package org.bandtrail.siteinstalls.duplicates;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Two trees of the register that look like one.
 *
 * @param first the one whose identity sorts first
 * @param second the other
 * @param sameTag whether both have the same tag at one site, spelling aside
 * @param distanceMm between their places in millimetres, null if one has none
 * @param near whether that is close enough to be one place
 * @param girthDifferenceMm between their girths in millimetres, null if one was never measured
 */
record DuplicatePair(
        One first,
        One second,
        boolean sameTag,
        @Nullable Long distanceMm,
        boolean near,
        @Nullable Long girthDifferenceMm) {

    /**
     * One of the two.
     *
     * @param treeId its identity
     * @param siteId its site
     * @param tag what is on its tag
     * @param species as people use it, empty if not known
     * @param speciesCode of the EPPO list, null if not known
     * @param lat latitude in degrees, null if nobody took it
     * @param lon longitude in degrees, null if nobody took it
     * @param girthMm measured last, in millimetres, null if never
     * @param bandsUp bands that hang on it now
     */
    record One(
            String treeId,
            String siteId,
            String tag,
            String species,
            @Nullable String speciesCode,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            @Nullable Long girthMm,
            long bandsUp) {}
}

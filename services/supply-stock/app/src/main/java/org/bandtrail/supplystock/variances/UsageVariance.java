package org.bandtrail.supplystock.variances;

import org.jspecify.annotations.Nullable;

/**
 * What was used of one item in one month's kits, beside what their lists planned. Quantities are millimetres or pieces.
 *
 * @param month in which the kits were handed out, UTC, such as {@code 2026-05}
 * @param kits settled kits with a list
 * @param planned what the lists took for their trees
 * @param used fitted and scrapped
 * @param missing did not come back and is not explained; not in {@code used}, because nobody knows
 * @param currency of the item's usual cost, null if the item is not in the register
 * @param varianceMinor used less planned at the item's usual cost, above zero unfavourable; null if that is not known
 */
record UsageVariance(
        String month,
        String materialCode,
        String kind,
        long kits,
        long planned,
        long used,
        long missing,
        @Nullable String currency,
        @Nullable Long varianceMinor) {
    /** Where the next page begins. */
    String key() {
        return month + " " + materialCode;
    }
}

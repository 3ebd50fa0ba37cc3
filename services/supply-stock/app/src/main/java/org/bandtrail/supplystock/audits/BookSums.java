package org.bandtrail.supplystock.audits;

import java.util.Map;

/**
 * The sums over all reels or over all batches, either as they are kept or as they are counted from the rows. The first
 * two come from the single moves and charges, the last two from the balances.
 *
 * @param moves how many moves there are
 * @param flow by kind of material: quantity moved from one kind of place to another, keyed {@code depot>crew}
 * @param paid by currency and account: minor units of the single charges; currency empty while a receipt is missing
 * @param there by kind of material: quantity at each station, and {@code received}
 * @param money by currency: {@code cost} and what each account has taken of it, minor units
 */
record BookSums(
        long moves,
        Map<String, Map<String, Long>> flow,
        Map<String, Map<String, Long>> paid,
        Map<String, Map<String, Long>> there,
        Map<String, Map<String, Long>> money) {

    /** What moved into a kind of place, of one kind of material. */
    long into(String kind, String place) {
        return flow.getOrDefault(kind, Map.of()).entrySet().stream()
                .filter(stretch -> stretch.getKey().endsWith(">" + place))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    /** What moved out of a kind of place, of one kind of material. */
    long outOf(String kind, String place) {
        return flow.getOrDefault(kind, Map.of()).entrySet().stream()
                .filter(stretch -> stretch.getKey().startsWith(place + ">"))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }
}

package org.bandtrail.frontdesk.books;

import java.util.Map;

/** What the ledger sums by kind of place instead of place by place, in words. */
final class PlaceSums {
    /** Words by what stands for all places of a kind. */
    static final Map<String, String> WORDS = Map.of(
            "tree:", "on trees",
            "bag:", "in waste bags",
            "disposed:", "disposed",
            "slit:", "slit into narrower reels",
            "not-received:", "used before its receipt");

    private PlaceSums() {}
}

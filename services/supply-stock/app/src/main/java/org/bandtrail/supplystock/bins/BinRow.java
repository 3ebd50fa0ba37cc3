package org.bandtrail.supplystock.bins;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One bin as people see it.
 *
 * @param words what it is for, may be empty
 * @param reels how many reels lie in it
 * @param mm millimetres on them together
 * @param pieces fasteners in it
 */
public record BinRow(String binId, String depotId, String words, long reels, long mm, long pieces) {

    /**
     * Something in a bin.
     *
     * @param holding {@code reel} or {@code batch}
     * @param materialCode null while its receipt is not in the books
     * @param quantity millimetres or pieces
     */
    public record Content(
            String holding, String id, @Nullable String materialCode, long quantity) {}

    /** A bin with what lies in it. */
    public record Whole(String binId, String depotId, List<Content> contents) {}
}

package org.bandtrail.supplystock.traces;

import java.util.Locale;

/** What a trace can begin with. Each knows which reels and batches it means, as a statement with {@code :asked}. */
public enum TraceOf {
    /** All that was delivered under a maker's lot. */
    LOT("SELECT holding, id FROM delivered_holding WHERE lot = :asked"),
    /** One reel. */
    REEL("SELECT 'reel' AS holding, id FROM reel_balance WHERE id = :asked"),
    /** One batch of fasteners. */
    BATCH("SELECT 'batch' AS holding, id FROM batch_balance WHERE id = :asked"),
    /** All that ever was on a tree. */
    TREE(everAt("tree")),
    /** All that ever was in a waste bag. */
    BAG(everAt("bag")),
    /** All that left with a disposal load. */
    LOAD(everAt("disposed"));

    private final String holdings;

    TraceOf(String holdings) {
        this.holdings = holdings;
    }

    /** The reels and batches it begins with: columns {@code holding} and {@code id}. */
    String holdings() {
        return holdings;
    }

    /** Whether the trace goes on from here to strips and places; from a place it goes back only. */
    public boolean goesOn() {
        return this == LOT || this == REEL || this == BATCH;
    }

    /** The word on the wire, lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads the word on the wire.
     *
     * @throws IllegalArgumentException naming the word
     */
    public static TraceOf of(String word) {
        for (TraceOf each : values()) {
            if (each.word().equals(word)) {
                return each;
            }
        }
        throw new IllegalArgumentException(
                "A trace of [%s] is not known. Ask for a lot, reel, batch, tree, bag or load.".formatted(word));
    }

    /** What is there now and what is gone stand in two indexes, hence two questions for each table. */
    private static String everAt(String kind) {
        String there = """
                SELECT '%1$s' AS holding, id FROM %1$s_place WHERE place_kind = '%2$s' AND place_id = :asked AND quantity <> 0
                UNION ALL
                SELECT '%1$s', id FROM %1$s_place WHERE place_kind = '%2$s' AND place_id = :asked AND quantity = 0""";
        return there.formatted("reel", kind) + "\nUNION ALL\n" + there.formatted("batch", kind);
    }
}

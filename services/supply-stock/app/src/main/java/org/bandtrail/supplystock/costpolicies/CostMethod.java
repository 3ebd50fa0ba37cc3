package org.bandtrail.supplystock.costpolicies;

/** The ways to value interchangeable pieces (IAS 2 Inventories, paragraphs 25 and 27). */
public enum CostMethod {
    /** The pieces that came first are used first; each receipt is a layer with its own cost (FIFO). */
    OLDEST_FIRST("oldest first"),
    /** All pieces in stock cost the same; the average moves with every receipt. */
    MOVING_AVERAGE("moving average");

    /** What holds until somebody decides. */
    public static final CostMethod DEFAULT = OLDEST_FIRST;

    private final String word;

    CostMethod(String word) {
        this.word = word;
    }

    /** For histories and messages. */
    public String word() {
        return word;
    }
}

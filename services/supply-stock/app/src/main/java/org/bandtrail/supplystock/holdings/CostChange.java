package org.bandtrail.supplystock.holdings;

/** Why the cost of a reel or batch changes after its receipt (IAS 2.10-2.11: cost is what it took to bring it here). */
public enum CostChange {
    /** The invoice asks for another price than the receipt was entered at. */
    INVOICE_DIFFERENCE("invoice difference"),
    /** The supplier credits part of the price. */
    CREDIT("credit"),
    /** Its share of the carriage. */
    FREIGHT("freight"),
    /** Its share of customs duty. */
    DUTY("duty"),
    /** The wide reel it was slit from changed its cost. */
    FROM_WIDE_REEL("cost of the wide reel"),
    /** An earlier change was wrong; this takes it back. */
    CORRECTION("correction");

    private final String word;

    CostChange(String word) {
        this.word = word;
    }

    /** The trade's word, for histories. */
    public String word() {
        return word;
    }
}

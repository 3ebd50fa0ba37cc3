package org.bandtrail.supplystock.purchases;

/** Where an order stands. */
public enum PurchaseState {
    /** Nothing has come yet. */
    ORDERED("ordered"),
    /** Something has come, something is still to come. */
    PARTLY_RECEIVED("partly received"),
    /** All has come. */
    RECEIVED("received"),
    /** Nobody waits for the rest. */
    CLOSED("closed"),
    /** Called off before anything came. */
    CANCELLED("cancelled");

    private final String word;

    PurchaseState(String word) {
        this.word = word;
    }

    /** The state in words, as kept in tables and sent in answers. */
    public String word() {
        return word;
    }

    /** Tells whether somebody still waits for something. */
    public boolean open() {
        return this == ORDERED || this == PARTLY_RECEIVED;
    }
}

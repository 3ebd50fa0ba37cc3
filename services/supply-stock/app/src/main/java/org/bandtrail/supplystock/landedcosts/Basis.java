package org.bandtrail.supplystock.landedcosts;

/** By what an amount is spread over lines of deliveries. */
public enum Basis {
    /** By what each line cost when it was received. */
    VALUE("value"),
    /** By the length of tape and mesh; fasteners have none and get nothing. */
    LENGTH("length"),
    /** By the number of reels and batches. */
    COUNT("number of reels and batches");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** In words, for people. */
    public String words() {
        return words;
    }
}

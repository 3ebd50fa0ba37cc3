package org.bandtrail.supplystock.billings;

/** What the three-way match says about one line of an invoice. */
public enum Verdict {
    /** Quantity and price are as ordered and received, or within the tolerances. */
    MATCHES("matches", false),
    /** The price is not the order's. A person may accept it with a reason. */
    PRICE_DIFFERS("price differs", true),
    /** More is billed than came. */
    MORE_THAN_RECEIVED("billed more than received", false),
    /** Nothing of it has come, or nothing is accepted yet. */
    NOTHING_RECEIVED("nothing received yet", false),
    /** More came and is billed than anybody ordered. A person may accept it with a reason. */
    MORE_THAN_ORDERED("billed more than ordered", true),
    /** No order names it. */
    NOT_ORDERED("not ordered", false),
    /** The order was in another currency. */
    OTHER_CURRENCY("another currency", false),
    /** The credit takes back more than was ever billed. */
    MORE_THAN_BILLED("credited more than billed", false);

    private final String words;
    private final boolean acceptable;

    Verdict(String words, boolean acceptable) {
        this.words = words;
        this.acceptable = acceptable;
    }

    /** In words, for people. */
    public String words() {
        return words;
    }

    /** Whether a person may accept it with a reason, because goods and order are there. */
    public boolean acceptable() {
        return acceptable;
    }
}

package org.bandtrail.supplystock.books;

/** Along which the books at a past moment are listed. */
enum AsOfBy {
    /** One row per place and item. */
    PLACE("place", "slot"),
    /** One row per item, over all places in stock. */
    ITEM("place", "material"),
    /** One row per account and item. */
    ACCOUNT("account", "slot"),
    /** One row per reel or batch, over all places in stock. */
    HOLDING("", "");

    private final String side;
    private final String name;

    AsOfBy(String side, String name) {
        this.side = side;
        this.name = name;
    }

    String side() {
        return side;
    }

    String column() {
        return name;
    }

    /**
     * Reads what people write in the address.
     *
     * @throws IllegalArgumentException naming the text and the words
     */
    static AsOfBy of(String text) {
        for (AsOfBy by : values()) {
            if (by.name().equalsIgnoreCase(text)) {
                return by;
            }
        }
        throw new IllegalArgumentException(
                "As of by [%s] is not known. Use place, item, account or holding.".formatted(text));
    }
}

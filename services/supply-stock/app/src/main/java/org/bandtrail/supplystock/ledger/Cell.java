package org.bandtrail.supplystock.ledger;

/** What is at one place while a page is worked on: as loaded, and what the page added. */
final class Cell {
    long quantity;
    long minor;
    long addedQuantity;
    long addedMinor;

    /** Whether a row of its own stands in the table; one that does not is written even if it comes back to nothing. */
    boolean stored;

    Cell(long quantity, long minor) {
        this.quantity = quantity;
        this.minor = minor;
    }

    void add(long moreQuantity, long moreMinor) {
        quantity += moreQuantity;
        minor += moreMinor;
        addedQuantity += moreQuantity;
        addedMinor += moreMinor;
    }
}

package org.bandtrail.supplystock.periods;

/**
 * What one check of a close found.
 *
 * @param check its name for ever, for example {@code open-discrepancies}
 * @param open how many things are open; 0 is clean
 * @param sentence what was found, for a person
 * @param fingerprint of the open things: a signature holds for exactly these and no others
 */
public record CheckFound(String check, long open, String sentence, String fingerprint) {
    /** Refuses a count below zero, which no check can find. */
    public CheckFound {
        if (open < 0) {
            throw new IllegalArgumentException("Check [%s] found [%d] things; it cannot be below 0.".formatted(check, open));
        }
    }

    /** Nothing is open. */
    public boolean clean() {
        return open == 0;
    }
}

package org.bandtrail.siteinstalls.cutting;

import org.bandtrail.kernel.Length;

/** The ranges of the formulas' inputs, refused by name. */
final class Sizes {
    private Sizes() {}

    static void positive(String name, Length length) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException("The %s [%s] must be more than zero.".formatted(name, length));
        }
    }

    static void notNegative(String name, Length length) {
        if (length.isNegative()) {
            throw new IllegalArgumentException("The %s [%s] must not be below zero.".formatted(name, length));
        }
    }
}

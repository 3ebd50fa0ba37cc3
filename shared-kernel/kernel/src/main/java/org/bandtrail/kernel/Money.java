package org.bandtrail.kernel;

import java.util.Currency;

/**
 * An amount in the smallest unit of its currency (ISO 4217: cent, yen, fils), from -10^15 to 10^15 units. Amounts of
 * two currencies never mix.
 *
 * @param minor whole minor units, for example 1250 for USD 12.50
 * @param currency ISO 4217 alphabetic code
 */
public record Money(long minor, String currency) implements Comparable<Money> {
    private static final long LIMIT = 1_000_000_000_000_000L;

    /**
     * Refuses amounts no programme has and codes that are no currency.
     *
     * @throws IllegalArgumentException naming the value
     */
    public Money {
        if (minor > LIMIT || minor < -LIMIT) {
            throw new IllegalArgumentException(
                    "Amount [%d] is beyond %d minor units. Check the number.".formatted(minor, LIMIT));
        }
        if (digits(currency) < 0) {
            throw new IllegalArgumentException(
                    "Currency [%s] has no minor unit, so no price is in it. Use one such as USD or EUR."
                            .formatted(currency));
        }
    }

    private static int digits(String currency) {
        try {
            // A missing code reads as "null", which is the code of nothing.
            return Currency.getInstance(String.valueOf(currency)).getDefaultFractionDigits();
        } catch (IllegalArgumentException unknown) {
            throw new IllegalArgumentException(
                    "Currency [%s] is not an ISO 4217 code. Use three letters, such as USD or EUR.".formatted(currency),
                    unknown);
        }
    }

    /** An amount of this many minor units. */
    public static Money of(long minor, String currency) {
        return new Money(minor, currency);
    }

    /** Nothing, in this currency. */
    public static Money zero(String currency) {
        return new Money(0, currency);
    }

    /** Digits after the point: 2 for USD, 0 for JPY, 3 for KWD (ISO 4217). */
    public int minorDigits() {
        return digits(currency);
    }

    /**
     * The sum.
     *
     * @throws IllegalArgumentException naming both amounts if their currencies differ
     */
    public Money plus(Money other) {
        return new Money(minor + sameCurrency(other).minor, currency);
    }

    /**
     * The difference.
     *
     * @throws IllegalArgumentException naming both amounts if their currencies differ
     */
    public Money minus(Money other) {
        return new Money(minor - sameCurrency(other).minor, currency);
    }

    private Money sameCurrency(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(
                    "[%s] and [%s] are of two currencies. Convert one amount first.".formatted(this, other));
        }
        return other;
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(minor, sameCurrency(other).minor);
    }

    /** For people and messages, for example {@code USD 12.50}. */
    @Override
    public String toString() {
        int digits = minorDigits();
        if (digits == 0) {
            return currency + " " + minor;
        }
        StringBuilder text = new StringBuilder(Long.toString(Math.abs(minor)));
        while (text.length() <= digits) {
            text.insert(0, '0');
        }
        text.insert(text.length() - digits, '.');
        return currency + (minor < 0 ? " -" : " ") + text;
    }
}

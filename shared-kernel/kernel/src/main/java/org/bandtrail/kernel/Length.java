package org.bandtrail.kernel;

/**
 * A length in whole millimetres, from -10^13 to 10^13. A negative length is a deficit: a place from which the books
 * took more than they knew to be there.
 */
public record Length(long mm) implements Comparable<Length> {
    /** No length. */
    public static final Length ZERO = new Length(0);

    private static final long LIMIT = 10_000_000_000_000L;

    /**
     * Refuses lengths no programme has.
     *
     * @throws IllegalArgumentException naming the value
     */
    public Length {
        if (mm > LIMIT || mm < -LIMIT) {
            throw new IllegalArgumentException("Length [%d mm] is beyond %d mm. Check the unit.".formatted(mm, LIMIT));
        }
    }

    /** A length of this many millimetres. */
    public static Length ofMm(long mm) {
        return new Length(mm);
    }

    /** Reads what people write, see {@link LengthText#parse}. */
    public static Length parse(String text) {
        return LengthText.parse(text);
    }

    /** The sum. */
    public Length plus(Length other) {
        return new Length(mm + other.mm);
    }

    /** The difference, negative if the other is longer. */
    /** The shorter of the two. */
    public Length minus(Length other) {
        return new Length(mm - other.mm);
    }

    /**
     * This many times the length.
     *
     * @throws IllegalArgumentException naming both if the product is beyond the range of a length
     */
    public Length times(long factor) {
        try {
            return new Length(Math.multiplyExact(mm, factor));
        } catch (ArithmeticException tooLong) {
            throw new IllegalArgumentException(
                    "Length [%d mm] times [%d] is beyond %d mm. Check the unit.".formatted(mm, factor, LIMIT), tooLong);
        }
    }

    /** The same length with the other sign. */
    public Length negated() {
        return new Length(-mm);
    }

    public Length min(Length other) {
        return mm <= other.mm ? this : other;
    }

    /** The longer of the two. */
    public Length max(Length other) {
        return mm >= other.mm ? this : other;
    }

    /** More than nothing. */
    public boolean isPositive() {
        return mm > 0;
    }

    /** A deficit. */
    public boolean isNegative() {
        return mm < 0;
    }

    /** Neither length nor deficit. */
    public boolean isZero() {
        return mm == 0;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(mm, other.mm);
    }

    /** For messages: metres with millimetres, for example {@code 12.345 m}. */
    @Override
    public String toString() {
        return LengthText.metres(this);
    }
}

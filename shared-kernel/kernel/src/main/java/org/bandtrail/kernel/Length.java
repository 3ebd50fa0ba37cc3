package org.bandtrail.kernel;

/**
 * A length in whole millimetres, from -10^13 to 10^13. A negative length is a deficit: a place from which the books
 * took more than they knew to be there.
 */
public record Length(long mm) implements Comparable<Length> {
    public static final Length ZERO = new Length(0);
    private static final long LIMIT = 10_000_000_000_000L;

    public Length {
        if (mm > LIMIT || mm < -LIMIT) {
            throw new IllegalArgumentException("Length [%d mm] is beyond %d mm. Check the unit.".formatted(mm, LIMIT));
        }
    }

    public static Length ofMm(long mm) {
        return new Length(mm);
    }

    /** Reads what people write, see {@link LengthText#parse}. */
    public static Length parse(String text) {
        return LengthText.parse(text);
    }

    public Length plus(Length other) {
        return new Length(mm + other.mm);
    }

    public Length minus(Length other) {
        return new Length(mm - other.mm);
    }

    public Length times(long factor) {
        return new Length(Math.multiplyExact(mm, factor));
    }

    public Length negated() {
        return new Length(-mm);
    }

    public Length min(Length other) {
        return mm <= other.mm ? this : other;
    }

    public Length max(Length other) {
        return mm >= other.mm ? this : other;
    }

    public boolean isPositive() {
        return mm > 0;
    }

    public boolean isNegative() {
        return mm < 0;
    }

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

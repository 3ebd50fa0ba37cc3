package org.bandtrail.kernel;

/** A count of fasteners, from -10^12 to 10^12. Negative counts are deficits, see {@link Length}. */
public record Pieces(long count) implements Comparable<Pieces> {
    /** Not one. */
    public static final Pieces ZERO = new Pieces(0);

    private static final long LIMIT = 1_000_000_000_000L;

    /**
     * Refuses counts no programme has.
     *
     * @throws IllegalArgumentException naming the value
     */
    public Pieces {
        if (count > LIMIT || count < -LIMIT) {
            throw new IllegalArgumentException(
                    "Count [%d] is beyond %d pieces. Check the number.".formatted(count, LIMIT));
        }
    }

    /** A count of this many pieces. */
    public static Pieces of(long count) {
        return new Pieces(count);
    }

    /** The sum. */
    public Pieces plus(Pieces other) {
        return new Pieces(count + other.count);
    }

    /** The difference, negative if the other is more. */
    public Pieces minus(Pieces other) {
        return new Pieces(count - other.count);
    }

    /** At least one. */
    public boolean isPositive() {
        return count > 0;
    }

    @Override
    public int compareTo(Pieces other) {
        return Long.compare(count, other.count);
    }

    @Override
    public String toString() {
        return count == 1 ? "1 piece" : count + " pieces";
    }
}

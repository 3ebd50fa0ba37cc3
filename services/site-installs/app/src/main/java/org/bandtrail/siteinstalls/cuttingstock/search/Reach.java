package org.bandtrail.siteinstalls.cuttingstock.search;

/**
 * Which weights a handful of pieces can add up to: one bit for each weight, one row for each piece more. Reading a sum
 * back prefers the pieces given last.
 */
final class Reach {
    private final int[] weights;
    private final int size;
    private final long[][] rows;

    /**
     * @param weights of the pieces, the first {@code size} count
     * @param limit the largest sum of interest, in mm
     */
    Reach(int[] weights, int size, int limit) {
        this.weights = weights;
        this.size = size;
        int words = (limit >> 6) + 1;
        this.rows = new long[size + 1][];
        rows[0] = new long[words];
        rows[0][0] = 1;
        for (int i = 0; i < size; i++) {
            rows[i + 1] = rows[i].clone();
            addTo(rows[i + 1], weights[i]);
        }
    }

    /** Adds the sums that one weight more makes, from the top so that it counts once. */
    static void addTo(long[] row, int weight) {
        int words = weight >> 6;
        int bits = weight & 63;
        for (int i = row.length - 1; i >= words; i--) {
            long moved = row[i - words] << bits;
            if (bits > 0 && i > words) {
                moved |= row[i - words - 1] >>> (64 - bits);
            }
            row[i] |= moved;
        }
    }

    /** The largest sum up to {@code limit}; 0 if nothing fits, or the limit is below 0. */
    int largest(long limit) {
        long[] row = rows[size];
        int at = (int) Math.min(limit, row.length * 64L - 1);
        for (; at > 0; at--) {
            if ((row[at >> 6] >>> (at & 63) & 1) != 0) {
                return at;
            }
            if ((at & 63) == 63 && row[at >> 6] == 0) {
                at -= 63;
            }
        }
        return 0;
    }

    /** Which of the pieces, by their place, add up to this sum. */
    boolean[] taken(int sum) {
        boolean[] taken = new boolean[size];
        int rest = sum;
        for (int i = size - 1; i >= 0 && rest > 0; i--) {
            int without = rest - weights[i];
            if (without >= 0 && has(rows[i], without)) {
                taken[i] = true;
                rest = without;
            }
        }
        if (rest != 0) {
            throw new IllegalStateException("A sum of [%d] was never reached.".formatted(sum));
        }
        return taken;
    }

    private static boolean has(long[] row, int at) {
        return (row[at >> 6] >>> (at & 63) & 1) != 0;
    }
}

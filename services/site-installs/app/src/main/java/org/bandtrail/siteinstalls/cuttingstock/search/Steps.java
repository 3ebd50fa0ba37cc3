package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.function.BooleanSupplier;

/**
 * Costs come in steps where no reel can keep a usable rest and cuts take nothing: then a reel that is cut is gone
 * whole, and what is gone together is a sum of lengths of reels. A bound between two such sums may be raised to the
 * next.
 */
final class Steps {
    private static final long MOST = 50_000_000;
    private final CutTask task;
    private final long unit;
    private final long gcd;
    private final long[] sums;

    /** When {@code over} ends it, steps are not known and bounds are raised less. */
    Steps(CutTask task, BooleanSupplier over) {
        this.task = task;
        boolean whole = task.blade() == 0 && task.kinds() > 0;
        long all = 0;
        long common = 0;
        long costs = 0;
        for (int reel = 0; reel < task.reels(); reel++) {
            whole = whole && task.rest(reel, task.weights()[task.kinds() - 1]) == 0;
            all += gone(reel);
            common = gcd(gone(reel), common);
            costs = gcd(task.cost(reel, 1), costs);
        }
        this.unit = Math.max(1, common);
        this.gcd = whole ? Math.max(1, costs) : 1;
        this.sums = whole && all / unit < MOST ? sums((int) (all / unit), over) : new long[0];
    }

    private long gone(int reel) {
        return task.lengths()[reel] + (task.fresh()[reel] ? task.worth() : 0);
    }

    private long[] sums(int most, BooleanSupplier over) {
        long[] reached = new long[(most >> 6) + 1];
        reached[0] = 1;
        for (int reel = 0; reel < task.reels(); reel++) {
            if (over.getAsBoolean()) {
                return new long[0];
            }
            Reach.addTo(reached, (int) (gone(reel) / unit));
        }
        return reached;
    }

    /** The least cost of a plan that cuts everything, given that none costs less than {@code bound}. */
    long up(long bound) {
        long raised = Math.ceilDiv(bound, gcd) * gcd;
        if (sums.length == 0) {
            return raised;
        }
        long least = Math.max(0, Math.ceilDiv(bound - task.freshReels(), task.scale()));
        long sum = Math.ceilDiv(least, unit);
        while (sum < sums.length * 64L && (sums[(int) (sum >> 6)] >>> (sum & 63) & 1) == 0) {
            sum++;
        }
        return sum * unit > least ? Math.max(raised, sum * unit * task.scale()) : raised;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}

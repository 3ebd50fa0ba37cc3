package org.bandtrail.siteinstalls.cuttingstock.search;

/**
 * The bound that counting alone gives: what is cut weighs what it weighs, less one blade allowance for each reel that
 * may end without a cut; and new reels are needed for what the part reels do not hold.
 */
final class Floor {

    private Floor() {}

    static long of(CutTask task) {
        long ends = (long) task.blade() * Math.min(task.reels(), task.pieces());
        long held = 0;
        long longest = 0;
        long all = 0;
        for (int reel = 0; reel < task.reels(); reel++) {
            all += task.capacity(reel);
            held += task.fresh()[reel] ? 0 : task.capacity(reel);
            longest = Math.max(longest, task.fresh()[reel] ? task.capacity(reel) : 0);
        }
        long wanted = task.wanted();
        long opened = longest == 0 ? 0 : Math.clamp(ceil(wanted - held, longest), 0, task.freshReels());
        long uncut = uncut(task, wanted - all);
        if (uncut > 0) {
            return task.scale() * (wanted - ends) + uncut * task.uncutBase();
        }
        return task.scale() * (wanted - ends + opened * task.worth()) + opened;
    }

    /**
     * Costs of plans that cut everything come in steps of this: when no reel can keep a usable rest, each reel costs
     * the same whatever comes off it.
     */
    static long step(CutTask task) {
        long step = 0;
        int least = task.kinds() == 0 ? 0 : task.weights()[task.kinds() - 1];
        for (int reel = 0; reel < task.reels(); reel++) {
            if (task.rest(reel, least) > 0) {
                return 1;
            }
            step = gcd(task.cost(reel, Math.max(1, least)), step);
        }
        return Math.max(1, step);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** The fewest pieces whose weight is at least {@code missing}: the heaviest ones. */
    private static long uncut(CutTask task, long missing) {
        long count = 0;
        long rest = missing;
        for (int kind = 0; kind < task.kinds() && rest > 0; kind++) {
            long some = Math.min(task.demand()[kind], ceil(rest, task.weights()[kind]));
            count += some;
            rest -= some * task.weights()[kind];
        }
        return count;
    }

    private static long ceil(long value, long by) {
        return value <= 0 ? 0 : (value + by - 1) / by;
    }
}

package org.bandtrail.siteinstalls.cuttingstock.search;

/**
 * The bound that counting alone gives: what is cut weighs what it weighs, and new reels are needed for what the
 * part reels do not hold.
 */
final class Floor {

    private Floor() {}

    static long of(CutTask task) {
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
            return task.scale() * wanted + uncut * task.uncutBase();
        }
        return task.scale() * (wanted + opened * task.worth()) + opened;
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

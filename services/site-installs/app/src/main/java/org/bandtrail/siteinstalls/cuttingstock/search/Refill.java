package org.bandtrail.siteinstalls.cuttingstock.search;

/** Fills a few emptied reels from a pool of pieces, one after the other, each as fully as chance lets it want. */
final class Refill {
    private final CutTask task;
    private final Chance chance;

    Refill(CutTask task, Chance chance) {
        this.task = task;
        this.chance = chance;
    }

    static long weight(CutTask task, int[] kinds) {
        long sum = 0;
        for (int kind : kinds) {
            sum += task.weights()[kind];
        }
        return sum;
    }

    /** Contents for the reels, in their order; what stays in the pool found no room. */
    int[][] fill(int[] reels, Pool pool) {
        int[] order = new int[reels.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        chance.shuffle(order, order.length);
        int[][] filled = new int[reels.length][0];
        if (chance.percent(50)) {
            pool.shuffle(chance);
        } else {
            pool.lightestFirst();
        }
        for (int i = 0; i < order.length && pool.size() > 0; i++) {
            boolean last = i == order.length - 1;
            if (last || !chance.percent(10)) {
                filled[order[i]] = next(reels[order[i]], pool, last);
            }
        }
        return filled;
    }

    private int[] next(int reel, Pool pool, boolean last) {
        int capacity = task.capacity(reel);
        if (pool.weight() <= capacity) {
            long lost = task.taken(reel, pool.weight()) - pool.weight();
            if (last || lost <= 0 || chance.percent(50)) {
                return pool.takeAll();
            }
        }
        Reach reach = pool.reach(capacity);
        int full = reach.largest(capacity);
        if (full == 0) {
            return new int[0];
        }
        if (!last && task.taken(reel, full) > full && chance.percent(50)) {
            int usable = reach.largest((long) task.lengths()[reel] - task.usable());
            if (usable > 0) {
                full = usable;
            } else if (chance.percent(50)) {
                return new int[0];
            }
        }
        return pool.take(reach.taken(full));
    }
}

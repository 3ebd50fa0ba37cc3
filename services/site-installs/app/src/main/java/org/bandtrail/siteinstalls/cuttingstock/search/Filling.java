package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * First plans. {@link #firstFit} and {@link #bestFit} put the longest pieces first on the first, or the fullest, reel
 * that has room; {@link #bySums} fills one reel after the other as nearly as the pieces allow, and passes over a reel
 * that cannot be filled well enough until all others had their turn.
 */
final class Filling {
    private static final int BENCH = 400;
    private final CutTask task;

    Filling(CutTask task) {
        this.task = task;
    }

    Layout firstFit(int[] order) {
        return fit(order, false);
    }

    Layout bestFit(int[] order) {
        return fit(order, true);
    }

    private Layout fit(int[] order, boolean best) {
        Layout layout = new Layout(task);
        long[] room = new long[task.reels()];
        int[][] on = new int[task.reels()][4];
        int[] counts = new int[task.reels()];
        Arrays.setAll(room, task::capacity);
        int[] uncut = new int[task.pieces()];
        int left = 0;
        for (int kind = 0; kind < task.kinds(); kind++) {
            for (int i = 0; i < task.demand()[kind]; i++) {
                int reel = reelFor(task.weights()[kind], order, room, counts, best);
                if (reel < 0) {
                    uncut[left++] = kind;
                    continue;
                }
                if (counts[reel] == on[reel].length) {
                    on[reel] = Arrays.copyOf(on[reel], 2 * counts[reel]);
                }
                on[reel][counts[reel]++] = kind;
                room[reel] -= task.weights()[kind];
            }
        }
        for (int reel = 0; reel < task.reels(); reel++) {
            layout.put(reel, Arrays.copyOf(on[reel], counts[reel]));
        }
        layout.leaveUncut(Arrays.copyOf(uncut, left));
        return layout;
    }

    /** The first reel with room, or of those already cut the one with least room; -1 if none has any. */
    private static int reelFor(int weight, int[] order, long[] room, int[] counts, boolean best) {
        int found = -1;
        for (int reel : order) {
            if (room[reel] < weight) {
                continue;
            }
            if (!best) {
                return reel;
            }
            if (found < 0 || counts[reel] > 0 && (counts[found] == 0 || room[reel] < room[found])) {
                found = reel;
            }
        }
        return found;
    }

    /**
     * @param order in which reels are tried
     * @param steps how much scrap is accepted on a reel, in mm, first try first
     * @param over ends it with what is filled so far; all else stays uncut
     */
    Layout bySums(int[] order, int[] steps, Chance chance, BooleanSupplier over) {
        Layout layout = new Layout(task);
        Pool pool = new Pool(task, task.pieces());
        pool.add(layout.uncut());
        for (int step : steps) {
            for (int reel : order) {
                if (over.getAsBoolean()) {
                    layout.leaveUncut(pool.takeAll());
                    return layout;
                }
                if (layout.weight(reel) == 0 && pool.size() > 0) {
                    fill(layout, reel, pool, step, chance);
                }
            }
        }
        layout.leaveUncut(pool.takeAll());
        return layout;
    }

    private void fill(Layout layout, int reel, Pool pool, int accepted, Chance chance) {
        int capacity = task.capacity(reel);
        if (pool.weight() <= capacity && task.taken(reel, pool.weight()) - pool.weight() <= accepted) {
            layout.put(reel, pool.takeAll());
            return;
        }
        Pool bench = bench(pool, chance);
        Reach reach = bench.reach(capacity);
        int sum = reach.largest(capacity);
        if (sum > 0 && task.taken(reel, sum) - sum <= accepted) {
            layout.put(reel, bench.take(reach.taken(sum)));
        }
        pool.add(bench.takeAll());
    }

    /** A part of the pool that is small enough to add up quickly, or all of it. */
    private static Pool bench(Pool pool, Chance chance) {
        pool.lightestFirst();
        if (pool.size() > BENCH) {
            pool.shuffle(chance);
        }
        boolean[] marked = new boolean[pool.size()];
        Arrays.fill(marked, 0, Math.min(BENCH, marked.length), true);
        Pool bench = pool.emptyCopy();
        bench.add(pool.take(marked));
        bench.lightestFirst();
        return bench;
    }
}

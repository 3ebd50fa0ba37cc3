package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Betters a plan a region at a time: a dozen reels, those that make scrap among them, are emptied and planned anew with
 * a linear program of their own. A region whose bound says that nothing is to be won there is left alone.
 */
final class Regions {
    private static final int PIECES = 44;
    private static final int UNUSED = 4;
    private static final int DIVES = 3;
    private static final int COLUMN_ROUNDS = 120;
    private final CutTask task;
    private final Chance chance;
    private final BooleanSupplier over;

    Regions(CutTask task, Chance chance, BooleanSupplier over) {
        this.task = task;
        this.chance = chance;
        this.over = over;
    }

    /** A plan that costs no more and is another one, or null if this try found none. */
    @Nullable
    Layout step(Layout from) {
        boolean[] region = new boolean[task.reels()];
        int[] demand = new int[task.kinds()];
        int pieces = 0;
        for (int kind : from.uncut()) {
            demand[kind]++;
            pieces++;
        }
        int[] order = new int[task.reels()];
        Arrays.setAll(order, reel -> reel);
        chance.shuffle(order, order.length);
        int most = PIECES / 2 + chance.below(PIECES);
        pieces = choose(from, order, region, demand, pieces, most / 2, true);
        choose(from, order, region, demand, pieces, most, false);
        int unused = 0;
        for (int reel : order) {
            if (from.weight(reel) == 0 && unused < UNUSED) {
                region[reel] = true;
                unused++;
            }
        }
        return planned(from, Rest.of(task, demand, region));
    }

    private int choose(
            Layout from, int[] order, boolean[] region, int[] demand, int already, int most, boolean onlyScrap) {
        int pieces = already;
        for (int reel : order) {
            long weight = from.weight(reel);
            boolean wanted = weight > 0 && !region[reel] && (!onlyScrap || task.taken(reel, weight) > weight);
            if (wanted && pieces < most) {
                region[reel] = true;
                for (int kind : from.on(reel)) {
                    demand[kind]++;
                    pieces++;
                }
            }
        }
        return pieces;
    }

    @Nullable
    private Layout planned(Layout from, Rest rest) {
        CutTask part = rest.task();
        if (part.pieces() == 0) {
            return null;
        }
        long cost = cost(from, rest);
        Bounding bounding = new Bounding(part, over);
        bounding.learn(rest.inPart(from, task.kinds()));
        bounding.run(cost, COLUMN_ROUNDS);
        if (over.getAsBoolean() || from.uncut().length == 0 && new Steps(part, over).up(bounding.bound()) >= cost) {
            return null;
        }
        for (int dive = 0; dive < DIVES; dive++) {
            Layout read = new Dive(part, chance, 10 + 30 * dive, over).run(bounding, cost - 1);
            if (read != null && read.score().cost() <= cost) {
                return rest.inWhole(from, read);
            }
        }
        return null;
    }

    private long cost(Layout from, Rest rest) {
        long cost = 0;
        for (int reel : rest.reels()) {
            cost += task.cost(reel, from.weight(reel));
        }
        for (int kind : from.uncut()) {
            cost += rest.task().uncutBase() + task.scale() * task.weights()[kind];
        }
        return cost;
    }
}

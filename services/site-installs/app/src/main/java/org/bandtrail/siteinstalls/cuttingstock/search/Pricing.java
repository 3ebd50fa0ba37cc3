package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The bounded knapsack behind the columns, exactly and for all reels at once: how much the pieces that add up to each
 * weight are worth at given prices. Prices are whole numbers, {@value #SCALE} to one unit of cost. Weights are counted
 * in the grain of the task, so that lengths to 5 mm take a fifth of the work.
 */
final class Pricing {
    /** Prices are counted in this fraction of a unit of cost. */
    static final long SCALE = 64;

    private static final long NONE = Long.MIN_VALUE / 4;
    private final CutTask task;
    private final ReelClasses classes;
    private final int grain;
    private final int limit;
    private final long[] worth;
    private final int[] passKind;
    private final int[] passTimes;
    private final long[][] chosen;
    private int passes;

    Pricing(CutTask task, ReelClasses classes) {
        this.task = task;
        this.classes = classes;
        this.grain = task.grain();
        int most = 0;
        for (int cls = 0; cls < classes.size(); cls++) {
            most = Math.max(most, task.capacity(classes.one(cls)));
        }
        this.limit = (int) (Math.min(most, task.wanted()) / grain);
        this.worth = new long[limit + 1];
        int parts = 0;
        for (int kind = 0; kind < task.kinds(); kind++) {
            parts += 33 - Integer.numberOfLeadingZeros(copies(kind));
        }
        this.passKind = new int[parts];
        this.passTimes = new int[parts];
        this.chosen = new long[parts][(limit >> 6) + 1];
    }

    private int copies(int kind) {
        return Math.min(task.demand()[kind], limit / weight(kind));
    }

    private int weight(int kind) {
        return task.weights()[kind] / grain;
    }

    /**
     * Works out what each weight is worth.
     *
     * @param prices per kind, in {@value #SCALE}ths of a unit of cost; kinds worth nothing are left out
     * @return false when {@code over} ended it; nothing may be read then
     */
    boolean solve(long[] prices, BooleanSupplier over) {
        Arrays.fill(worth, NONE);
        worth[0] = 0;
        passes = 0;
        int reached = 0;
        for (int kind = 0; kind < task.kinds(); kind++) {
            if (over.getAsBoolean()) {
                return false;
            }
            int left = prices[kind] > 0 ? copies(kind) : 0;
            for (int times = 1; left > 0; times *= 2) {
                int now = Math.min(times, left);
                left -= now;
                reached = (int) Math.min(limit, reached + (long) now * weight(kind));
                pass(kind, now, prices[kind] * now, reached);
            }
        }
        return true;
    }

    private void pass(int kind, int times, long price, int reached) {
        int weight = weight(kind) * times;
        long[] bits = chosen[passes];
        Arrays.fill(bits, 0);
        passKind[passes] = kind;
        passTimes[passes++] = times;
        for (int at = reached; at >= weight; at--) {
            long with = worth[at - weight] + price;
            if (with > worth[at]) {
                worth[at] = with;
                bits[at >> 6] |= 1L << (at & 63);
            }
        }
    }

    /**
     * The best ways to cut a reel of a class at the prices solved for, by what each is worth less what it costs; the
     * very best first, the others of different weight. Empty when every way costs at least what it is worth.
     */
    List<Offer> best(int cls, int many) {
        int reel = classes.one(cls);
        int most = Math.min(limit, task.capacity(reel) / grain);
        List<Offer> best = new ArrayList<>();
        long least = 0;
        for (int weight = most; weight > 0; weight--) {
            long gain = worth[weight] <= least ? 0 : worth[weight] - SCALE * task.cost(reel, (long) weight * grain);
            if (gain > least) {
                int at = best.size();
                while (at > 0 && best.get(at - 1).gain() < gain) {
                    at--;
                }
                best.add(at, new Offer(cls, weight * grain, gain));
                if (best.size() > many) {
                    best.removeLast();
                    least = best.getLast().gain();
                }
            }
        }
        return best;
    }

    /** The column behind an offer. */
    Column column(Offer offer) {
        int[] perKind = new int[task.kinds()];
        int rest = offer.weight() / grain;
        for (int pass = passes - 1; pass >= 0 && rest > 0; pass--) {
            if ((chosen[pass][rest >> 6] >>> (rest & 63) & 1) != 0) {
                perKind[passKind[pass]] += passTimes[pass];
                rest -= passTimes[pass] * weight(passKind[pass]);
            }
        }
        return Column.of(task, classes, offer.cls(), perKind);
    }

    /**
     * A way to cut a reel that is worth more than it costs.
     *
     * @param cls class of the reel
     * @param weight of the pieces, in mm
     * @param gain worth less cost, in {@value #SCALE}ths of a unit of cost, above 0
     */
    record Offer(int cls, int weight, long gain) {}
}

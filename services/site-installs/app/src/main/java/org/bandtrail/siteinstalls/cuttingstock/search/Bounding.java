package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Bound from the linear program over all ways to cut. For any prices p of the pieces, no plan costs less than the
 * pieces are worth at p, less what the best way to cut each reel is worth at p beyond its cost (Lagrange; with prices
 * of the master program it is Farley's bound in its form for several lengths). Prices are rounded to whole numbers
 * first and the best ways found exactly, so the bound owes nothing to floating point.
 */
final class Bounding {
    private static final int PIVOTS = 4_000;
    private static final double NARROW = 1.1;
    private static final int AT_ONCE = 12;
    private static final double NEAR = 0.3;
    private final CutTask task;
    private final ReelClasses classes;
    private final Pricing pricing;
    private final Master master;
    private final long ceiling;
    private final long floor;
    private final BooleanSupplier over;
    private final Set<String> learnt = new HashSet<>();
    private long bound;
    private long[] bestPrices;

    Bounding(CutTask task, BooleanSupplier over) {
        this.task = task;
        this.classes = new ReelClasses(task);
        this.pricing = new Pricing(task, classes);
        this.ceiling = Math.min(task.uncutBase(), 4 * dearest(task));
        this.floor = Floor.of(task);
        // at prices by weight nothing is worth more than it costs
        this.bound = task.scale() * task.wanted();
        this.over = over;
        this.bestPrices = new long[task.kinds()];
        double[] uncutCosts = new double[task.kinds()];
        for (int kind = 0; kind < uncutCosts.length; kind++) {
            // when no millimetre is wasted a piece is worth what it weighs
            bestPrices[kind] = task.scale() * task.weights()[kind] * Pricing.SCALE;
            uncutCosts[kind] = NARROW * task.scale() * task.weights()[kind];
        }
        this.master = new Master(task, classes, uncutCosts);
    }

    private static long dearest(CutTask task) {
        long most = 1;
        for (int reel = 0; reel < task.reels(); reel++) {
            most = Math.max(most, task.cost(reel, task.capacity(reel)));
        }
        return most;
    }

    ReelClasses classes() {
        return classes;
    }

    Master master() {
        return master;
    }

    /** The best bound so far, in the units of {@link CutTask#cost}, rounded up. */
    long bound() {
        return bound;
    }

    /** The ways to cut that a plan uses are a good beginning. */
    void learn(Layout layout) {
        for (int cls = 0; cls < classes.size(); cls++) {
            for (int reel : classes.reels(cls)) {
                if (layout.on(reel).length > 0) {
                    int[] perKind = new int[task.kinds()];
                    for (int kind : layout.on(reel)) {
                        perKind[kind]++;
                    }
                    addIfNew(Column.of(task, classes, cls, perKind));
                }
            }
        }
    }

    private void addIfNew(Column column) {
        if (learnt.add(column.name())) {
            master.add(column);
        }
    }

    /**
     * Adds columns until none is missing, the bound reaches {@code enough}, or the program costs as little as counting
     * alone says it must.
     *
     * @param rounds how many times at most
     * @return true when it ended so, false when patience ended or the method gave up
     */
    boolean run(long enough, int rounds) {
        for (int round = 0; round < rounds; round++) {
            if (!master.solve(PIVOTS, over) || over.getAsBoolean()) {
                return false;
            }
            if (master.cost() <= floor + task.scale() * NEAR) {
                return true;
            }
            long[] prices = rounded(master.prices());
            int added = price(between(prices, bestPrices));
            if (added == 0) {
                added = price(prices);
            }
            if (bound >= enough || added == 0 && !widen()) {
                return true;
            }
            if (added < 0) {
                return false;
            }
        }
        return false;
    }

    /**
     * Leaving pieces uncut was made cheap, to keep prices near the truth; where the program makes use of it, no more.
     */
    private boolean widen() {
        double[] uncut = master.uncut();
        boolean any = false;
        for (int kind = 0; kind < uncut.length; kind++) {
            if (uncut[kind] > 1e-5 && master.uncutCost(kind) < ceiling) {
                master.uncutCost(kind, Math.min(ceiling, 2 * master.uncutCost(kind)));
                any = true;
            }
        }
        if (any) {
            master.repriced(over);
        }
        return any;
    }

    /** Prices near the best so far swing less from round to round. */
    private static long[] between(long[] prices, long[] best) {
        long[] half = new long[prices.length];
        for (int kind = 0; kind < half.length; kind++) {
            half[kind] = (prices[kind] + 2 * best[kind]) / 3;
        }
        return half;
    }

    private long[] rounded(double[] prices) {
        long[] whole = new long[task.kinds()];
        for (int kind = 0; kind < whole.length; kind++) {
            whole[kind] = Math.clamp(Math.round(prices[kind] * Pricing.SCALE), 0, ceiling * Pricing.SCALE);
        }
        return whole;
    }

    /** Adds the best column of each class that the master would take; says how many, -1 when patience ended. */
    private int price(long[] prices) {
        if (!pricing.solve(prices, over)) {
            return -1;
        }
        long sum = 0;
        for (int kind = 0; kind < prices.length; kind++) {
            sum += prices[kind] * task.demand()[kind];
        }
        double[] now = master.prices();
        int added = 0;
        for (int cls = 0; cls < classes.size(); cls++) {
            if (over.getAsBoolean()) {
                return -1;
            }
            List<Pricing.Offer> offers = pricing.best(cls, Math.clamp(task.kinds() / classes.size(), 1, AT_ONCE));
            sum -= offers.isEmpty() ? 0 : offers.getFirst().gain() * classes.count(cls);
            for (Pricing.Offer offer : offers) {
                Column column = pricing.column(offer);
                if (gain(column, now) > 1e-9 * ceiling) {
                    master.add(column);
                    added++;
                }
            }
        }
        long here = Math.ceilDiv(sum, Pricing.SCALE);
        if (here > bound) {
            bound = here;
            bestPrices = prices;
        }
        return added;
    }

    private double gain(Column column, double[] prices) {
        double gain = prices[task.kinds() + column.cls()] - column.cost();
        for (int i = 0; i < column.kinds().length; i++) {
            gain += prices[column.kinds()[i]] * column.counts()[i];
        }
        return gain;
    }
}

package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A plan read from the linear program: the columns it uses most are fixed, the program is solved again for what is
 * left, with columns of its own, and so on to the bottom.
 */
final class Dive {
    private static final int COLUMN_ROUNDS = 40;
    private static final int TAIL = 30;
    private static final int NODES = 300;
    private static final int PARTS = 2;
    private final CutTask whole;
    private final Chance chance;
    private final BooleanSupplier over;
    private final int freedom;
    private final int[] demand;
    private final boolean[] free;
    private final Layout layout;

    /** {@code freedom}: how far chance may stray from the column used most, in hundredths of a use. */
    Dive(CutTask whole, Chance chance, int freedom, BooleanSupplier over) {
        this.freedom = freedom;
        this.whole = whole;
        this.chance = chance;
        this.over = over;
        this.demand = whole.demand().clone();
        this.free = new boolean[whole.reels()];
        Arrays.fill(free, true);
        this.layout = new Layout(whole);
    }

    /**
     * A plan, or null when patience ended on the way down.
     *
     * @param target a cost that would be welcome; when few pieces are left it is tried whether they can keep to it
     */
    @Nullable
    Layout run(Bounding top, long target) {
        Bounding bounding = top;
        Rest rest = Rest.of(whole, demand, free);
        while (rest.task().pieces() > 0 && rest.task().reels() > 0) {
            if (!fix(bounding, rest)) {
                break;
            }
            Rest next = Rest.of(whole, demand, free);
            if (next.task().pieces() == 0 || next.task().pieces() <= TAIL && complete(next, target)) {
                break;
            }
            Bounding below = new Bounding(next.task(), over);
            hand(bounding, rest, below, next);
            below.run(Long.MAX_VALUE, COLUMN_ROUNDS);
            if (over.getAsBoolean()) {
                return null;
            }
            bounding = below;
            rest = next;
        }
        finish();
        return layout;
    }

    /** Cuts what is left within what the target leaves for it, if possible: with no waste, with some, with all. */
    private boolean complete(Rest rest, long target) {
        long cost = 0;
        for (int reel = 0; reel < free.length; reel++) {
            cost += whole.cost(reel, layout.weight(reel));
        }
        long least = whole.scale() * rest.task().wanted();
        long spare = target - cost - least;
        for (int part = 0; part <= PARTS && spare >= 0; part++) {
            long here = spare * part * part / (PARTS * PARTS);
            Layout tail = new Completion(rest.task(), NODES, over).run(least + here);
            if (tail != null) {
                for (int reel = 0; reel < rest.reels().length; reel++) {
                    layout.put(rest.reels()[reel], rest.inWhole(tail.on(reel)));
                    free[rest.reels()[reel]] &= tail.weight(reel) == 0;
                }
                Arrays.fill(demand, 0);
                return true;
            }
        }
        return false;
    }

    /** Fixes columns used at least once, or the one used most; false when the program uses none. */
    private boolean fix(Bounding bounding, Rest rest) {
        double[] use = bounding.master().use();
        List<Column> columns = bounding.master().columns();
        List<Integer> most = new ArrayList<>();
        for (int j = 0; j < use.length; j++) {
            if (use[j] > 1e-6) {
                most.add(j);
            }
        }
        double[] wanted = use.clone();
        for (int j : most) {
            wanted[j] = Math.min(1, use[j]) + 0.01 * chance.below(1 + freedom);
        }
        most.sort(Comparator.comparing((Integer j) -> -wanted[j]));
        int fixed = 0;
        for (int j : most) {
            int times = (int) Math.floor(use[j] + 1e-4);
            boolean more = use[j] > 0.9 || fixed == 0;
            for (int i = 0; i < Math.max(times, more ? 1 : 0) && place(columns.get(j), bounding, rest); i++) {
                fixed++;
            }
        }
        return fixed > 0;
    }

    private boolean place(Column column, Bounding bounding, Rest rest) {
        for (int i = 0; i < column.kinds().length; i++) {
            if (demand[rest.kinds()[column.kinds()[i]]] < column.counts()[i]) {
                return false;
            }
        }
        for (int reel : bounding.classes().reels(column.cls())) {
            int inWhole = rest.reels()[reel];
            if (free[inWhole]) {
                free[inWhole] = false;
                layout.put(inWhole, rest.inWhole(column.contents()));
                for (int i = 0; i < column.kinds().length; i++) {
                    demand[rest.kinds()[column.kinds()[i]]] -= column.counts()[i];
                }
                return true;
            }
        }
        return false;
    }

    /** Columns that can still be cut go on to the program of what is left. */
    private void hand(Bounding from, Rest above, Bounding to, Rest below) {
        int[] kindBelow = new int[whole.kinds()];
        for (int kind = 0; kind < below.kinds().length; kind++) {
            kindBelow[below.kinds()[kind]] = kind;
        }
        for (Column column : from.master().columns()) {
            int cls =
                    to.classes().like(below.task(), above.task(), from.classes().one(column.cls()));
            int[] perKind = new int[below.task().kinds()];
            boolean fits = cls >= 0;
            for (int i = 0; i < column.kinds().length && fits; i++) {
                int kind = above.kinds()[column.kinds()[i]];
                fits = demand[kind] >= column.counts()[i];
                if (fits) {
                    perKind[kindBelow[kind]] = column.counts()[i];
                }
            }
            if (fits) {
                to.master().add(Column.of(below.task(), to.classes(), cls, perKind));
            }
        }
    }

    /** What is left is filled in as the sums allow. */
    private void finish() {
        Rest rest = Rest.of(whole, demand, free);
        if (rest.task().pieces() == 0) {
            layout.leaveUncut(new int[0]);
            return;
        }
        int[] order = new int[rest.task().reels()];
        Arrays.setAll(order, reel -> reel);
        Layout last = new Filling(rest.task()).firstFit(order);
        for (int reel = 0; reel < order.length; reel++) {
            layout.put(rest.reels()[reel], rest.inWhole(last.on(reel)));
        }
        layout.leaveUncut(rest.inWhole(last.uncut()));
    }
}

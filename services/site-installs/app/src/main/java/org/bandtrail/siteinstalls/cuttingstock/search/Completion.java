package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Cuts every piece of a small task for at most a given cost, or shows that no plan does: the longest piece left goes on
 * a reel of each class in turn, with every handful of others that does not waste more than may still be wasted. What
 * was found impossible once is not tried again.
 */
final class Completion {
    private static final int SUBSETS = 20;
    private static final int LOOK = 255;
    private final CutTask task;
    private final ReelClasses classes;
    private final BooleanSupplier over;
    private final int[] demand;
    private final int[] used;
    private final List<Column> plan = new ArrayList<>();
    private final Set<List<Long>> failed = new HashSet<>();
    private int nodes;
    private int subsets;
    private boolean whole = true;

    /** {@code nodes}: how many half plans are looked at before it gives up. */
    Completion(CutTask task, int nodes, BooleanSupplier over) {
        this.task = task;
        this.classes = new ReelClasses(task);
        this.over = over;
        this.demand = task.demand().clone();
        this.used = new int[classes.size()];
        this.nodes = nodes;
        this.subsets = nodes * SUBSETS;
    }

    /** A plan that cuts all for at most {@code target}, in the units of {@link CutTask#cost}; null if none is found. */
    @Nullable
    Layout run(long target) {
        long spare = target - task.scale() * task.wanted();
        if (spare < 0 || !place(0, spare)) {
            return null;
        }
        Layout layout = new Layout(task);
        int[] next = new int[classes.size()];
        for (Column column : plan) {
            layout.put(classes.reels(column.cls()).get(next[column.cls()]++), column.contents());
        }
        layout.leaveUncut(new int[0]);
        return layout;
    }

    /** True when all was looked at: then a null of {@link #run} says that there is no such plan. */
    boolean everything() {
        return whole;
    }

    private boolean place(int from, long spare) {
        int first = from;
        while (first < demand.length && demand[first] == 0) {
            first++;
        }
        if (first == demand.length) {
            return true;
        }
        if (nodes-- <= 0 || over.getAsBoolean()) {
            whole = false;
            nodes = 0;
            subsets = 0;
            return false;
        }
        List<Long> here = state(spare);
        if (failed.contains(here)) {
            return false;
        }
        for (Way way : ways(first, spare)) {
            take(way.column(), -1);
            boolean done = place(first, spare - way.waste());
            if (done) {
                return true;
            }
            take(way.column(), 1);
            if (nodes <= 0) {
                whole = false;
                return false;
            }
        }
        failed.add(here);
        return false;
    }

    private void take(Column column, int sign) {
        for (int i = 0; i < column.kinds().length; i++) {
            demand[column.kinds()[i]] += sign * column.counts()[i];
        }
        used[column.cls()] -= sign;
        if (sign < 0) {
            plan.add(column);
        } else {
            plan.removeLast();
        }
    }

    private List<Long> state(long spare) {
        List<Long> state = new ArrayList<>(demand.length + used.length + 1);
        state.add(spare);
        Arrays.stream(demand).forEach(count -> state.add((long) count));
        Arrays.stream(used).forEach(count -> state.add((long) count));
        return state;
    }

    /** All ways to cut a reel with a piece of this kind on it that waste at most {@code spare}, least waste first. */
    private List<Way> ways(int first, long spare) {
        List<Way> ways = new ArrayList<>();
        long left = 0;
        for (int kind = first; kind < demand.length; kind++) {
            left += (long) demand[kind] * task.weights()[kind];
        }
        for (int cls = 0; cls < classes.size(); cls++) {
            int capacity = task.capacity(classes.one(cls));
            if (used[cls] < classes.count(cls) && capacity >= task.weights()[first]) {
                int[] perKind = new int[demand.length];
                perKind[first] = 1;
                fill(new Half(cls, perKind, spare, ways), first, task.weights()[first], left - task.weights()[first]);
            }
        }
        ways.sort(Comparator.comparingLong(Way::waste));
        return ways;
    }

    /** {@code left}: weight of the pieces from this kind on that are not on the reel yet. */
    private void fill(Half half, int kind, long weight, long left) {
        int reel = classes.one(half.cls());
        if (subsets-- <= 0 || (subsets & LOOK) == 0 && over.getAsBoolean()) {
            whole = false;
            subsets = 0;
            return;
        }
        long least = task.cost(reel, weight + left) - task.scale() * (weight + left);
        boolean never = task.lengths()[reel] - task.weights()[demand.length - 1] < task.usable();
        if (never && weight + left < task.capacity(reel) && least > half.spare()) {
            return;
        }
        int next = kind;
        while (next < demand.length && room(half, next, reel, weight) == 0) {
            left -= (long) (demand[next] - half.perKind()[next]) * task.weights()[next];
            next++;
        }
        if (next == demand.length) {
            half.keep(task, classes, weight);
            return;
        }
        long rest = left - (long) (demand[next] - half.perKind()[next]) * task.weights()[next];
        int before = half.perKind()[next];
        for (int more = room(half, next, reel, weight); more >= 0; more--) {
            half.perKind()[next] = before + more;
            fill(half, next + 1, weight + (long) more * task.weights()[next], rest);
        }
        half.perKind()[next] = before;
    }

    private int room(Half half, int kind, int reel, long weight) {
        long fits = (task.capacity(reel) - weight) / task.weights()[kind];
        return (int) Math.min(fits, demand[kind] - half.perKind()[kind]);
    }

    /** A way to cut, and what it costs beyond the weight of its pieces. */
    private record Way(Column column, long waste) {}

    /** A reel that is being filled. */
    private record Half(int cls, int[] perKind, long spare, List<Way> ways) {

        void keep(CutTask task, ReelClasses classes, long weight) {
            long waste = task.cost(classes.one(cls), weight) - task.scale() * weight;
            if (waste <= spare) {
                ways.add(new Way(Column.of(task, classes, cls, perKind), waste));
            }
        }
    }
}

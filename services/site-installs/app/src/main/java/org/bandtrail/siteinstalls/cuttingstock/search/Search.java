package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** The whole search for one task: first plans, bettering, bound. */
public final class Search {
    private static final int ROUNDS = 12_000;
    private static final int POLISH = 2_000;
    private static final int DIVES = 8;
    private static final int COLUMN_ROUNDS = 500;
    private final CutTask task;
    private final Chance chance;
    private final BooleanSupplier over;

    private Search(CutTask task, long seed, BooleanSupplier over) {
        this.task = task;
        this.chance = new Chance(seed);
        this.over = over;
    }

    /**
     * Searches until the best plan is proven, nothing more is to be tried, or {@code over} says so.
     *
     * @param seed the order in which things are tried follows from it
     */
    public static Found run(CutTask task, long seed, BooleanSupplier over) {
        return new Search(task, seed, over).run();
    }

    private Found run() {
        long step = Floor.step(task);
        Improvement improvement = new Improvement(task, first(), chance, over);
        long floor = Floor.of(task);
        improvement.run(ROUNDS / 4, floor);
        if (improvement.bestScore().cost() > floor) {
            floor = Math.max(floor, deep(improvement, floor, step));
        }
        improvement.polish(POLISH);
        return new Found(improvement.best(), improvement.bestScore().cost(), floor, over.getAsBoolean());
    }

    /** Bounds the task by its linear program, and goes down from it until the best plan is proven or tries end. */
    private long deep(Improvement improvement, long floor, long step) {
        Bounding bounding = new Bounding(task, over);
        bounding.learn(improvement.best());
        boolean complete = bounding.run(improvement.bestScore().cost() - step + 1, COLUMN_ROUNDS);
        long bound = Math.max(floor, inSteps(bounding.bound(), step, improvement));
        for (int dive = 0; complete && dive < DIVES && improvement.bestScore().cost() > bound; dive++) {
            Layout read = new Dive(task, chance, over).run(bounding);
            if (read != null) {
                improvement.offer(read);
            }
            improvement.run(ROUNDS, bound);
        }
        if (!complete) {
            improvement.run(ROUNDS, bound);
        }
        return bound;
    }

    private long inSteps(long bound, long step, Improvement improvement) {
        return improvement.best().uncut().length > 0 ? bound : Math.ceilDiv(bound, step) * step;
    }

    private Layout first() {
        Filling filling = new Filling(task);
        List<Layout> starts = new ArrayList<>();
        for (int[] order : orders()) {
            starts.add(filling.firstFit(order));
            starts.add(filling.bestFit(order));
        }
        for (int[] order : orders()) {
            if (over.getAsBoolean()) {
                break;
            }
            starts.add(filling.bySums(order, new int[] {Integer.MAX_VALUE}, chance, false));
            starts.add(filling.bySums(order, new int[] {0, 3, 20, Integer.MAX_VALUE}, chance, false));
        }
        return starts.stream().min(Comparator.comparing(Layout::score)).orElseThrow();
    }

    /** Orders of reels: part reels before new ones; as they are used, shortest first, longest first. */
    private List<int[]> orders() {
        Comparator<Integer> partsFirst = Comparator.comparing(reel -> task.fresh()[reel]);
        Comparator<Integer> byAge = Comparator.comparing(reel -> task.ages()[reel]);
        Comparator<Integer> shortest = Comparator.comparing(reel -> task.lengths()[reel]);
        return List.of(
                ordered(partsFirst.thenComparing(byAge)),
                ordered(partsFirst.thenComparing(shortest).thenComparing(byAge)),
                ordered(partsFirst.thenComparing(shortest.reversed()).thenComparing(byAge)));
    }

    private int[] ordered(Comparator<Integer> by) {
        Integer[] reels = IntStream.range(0, task.reels()).boxed().toArray(Integer[]::new);
        Arrays.sort(reels, by);
        return Arrays.stream(reels).mapToInt(Integer::intValue).toArray();
    }
}

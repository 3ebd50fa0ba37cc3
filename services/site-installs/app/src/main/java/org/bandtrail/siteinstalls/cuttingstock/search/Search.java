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
    private static final int DIVES = 24;
    private static final int REGIONS = 1_200;
    private static final int IDLE = 240;
    private static final int SMALL = 80;
    private static final int NODES = 20_000;
    private static final int MANY = 500;
    private static final int REGION_ROUNDS = 50;
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
        Steps steps = new Steps(task, over);
        List<Layout> starts = starts();
        Improvement improvement = new Improvement(task, starts.getFirst(), chance, over);
        long floor = raised(Floor.of(task), steps, improvement);
        for (Layout start : starts) {
            improvement.offer(start);
            improvement.run(ROUNDS / 6, floor);
            improvement.offer(sparing(start));
        }
        if (improvement.bestScore().cost() > floor) {
            floor = Math.max(floor, deep(improvement, starts, floor, steps));
        }
        improvement.polish(POLISH);
        return new Found(improvement.best(), improvement.bestScore().cost(), floor, over.getAsBoolean());
    }

    /** Bounds the task by its linear program, and goes down from it until the best plan is proven or tries end. */
    private long deep(Improvement improvement, List<Layout> starts, long floor, Steps steps) {
        if (task.pieces() > MANY) {
            regions(improvement, floor, REGIONS / 2);
        }
        Bounding bounding = new Bounding(task, over);
        bounding.learn(improvement.best());
        starts.forEach(bounding::learn);
        boolean complete = bounding.run(improvement.bestScore().cost(), COLUMN_ROUNDS);
        long bound = Math.max(floor, raised(bounding.bound(), steps, improvement));
        bound = proved(improvement, bound, steps);
        for (int dive = 0; complete && dive < DIVES && improvement.bestScore().cost() > bound; dive++) {
            Layout read = new Dive(task, chance, 5 + 3 * dive, over)
                    .run(bounding, improvement.bestScore().cost() - 1);
            if (read != null) {
                improvement.offer(read);
                bounding.learn(read);
            }
            improvement.run(ROUNDS / 12, bound);
        }
        regions(improvement, bound, REGIONS);
        return bound;
    }

    /** Small tasks are looked through for a better plan; where there is none, that is a bound. */
    private long proved(Improvement improvement, long from, Steps steps) {
        long bound = from;
        boolean everything = task.pieces() <= SMALL && improvement.best().uncut().length == 0;
        while (everything && bound < improvement.bestScore().cost()) {
            Completion completion = new Completion(task, NODES, over);
            Layout found = completion.run(bound);
            if (found != null) {
                improvement.offer(found);
            }
            everything = found == null && completion.everything();
            bound = everything ? steps.up(bound + 1) : bound;
        }
        return bound;
    }

    private void regions(Improvement improvement, long bound, int tries) {
        Regions regions = new Regions(task, chance, over);
        improvement.offer(improvement.best());
        int idle = 0;
        for (int i = 0; i < tries && idle < IDLE && !over.getAsBoolean(); i++) {
            if (improvement.bestScore().cost() <= bound) {
                break;
            }
            Layout next = regions.step(improvement.now());
            long before = improvement.bestScore().cost();
            if (next != null) {
                improvement.offer(next);
            }
            improvement.run(REGION_ROUNDS, bound);
            idle = improvement.bestScore().cost() < before ? 0 : idle + 1;
        }
    }

    /** Betters a plan without opening one more new reel. */
    private Layout sparing(Layout start) {
        boolean[] free = new boolean[task.reels()];
        for (int reel = 0; reel < free.length; reel++) {
            free[reel] = !task.fresh()[reel] || start.weight(reel) > 0;
        }
        Rest rest = Rest.of(task, task.demand(), free);
        Improvement within = new Improvement(rest.task(), rest.inPart(start, task.kinds()), chance, over);
        within.run(ROUNDS / 3, Floor.of(rest.task()));
        return rest.inWhole(start, within.best());
    }

    private static long raised(long bound, Steps steps, Improvement improvement) {
        return improvement.best().uncut().length > 0 ? bound : steps.up(bound);
    }

    /** First plans worth going on from: the cheapest, and the cheapest of those that open fewest reels. */
    private List<Layout> starts() {
        Filling filling = new Filling(task);
        List<Layout> starts = new ArrayList<>();
        for (int[] order : orders()) {
            if (!starts.isEmpty() && over.getAsBoolean()) {
                break;
            }
            starts.add(filling.firstFit(order));
            starts.add(filling.bestFit(order));
        }
        for (int[] order : orders()) {
            if (over.getAsBoolean()) {
                break;
            }
            starts.add(filling.bySums(order, new int[] {Integer.MAX_VALUE}, chance, over));
            starts.add(filling.bySums(order, new int[] {0, 3, 20, Integer.MAX_VALUE}, chance, over));
        }
        Comparator<Layout> cheapest = Comparator.comparing(Layout::score);
        Comparator<Layout> fewest = Comparator.comparing(Layout::opened);
        Layout first = starts.stream().min(cheapest).orElseThrow();
        Layout second = starts.stream().min(fewest.thenComparing(cheapest)).orElseThrow();
        return first == second ? List.of(first) : List.of(first, second);
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

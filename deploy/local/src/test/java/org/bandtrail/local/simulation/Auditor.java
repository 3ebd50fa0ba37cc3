package org.bandtrail.local.simulation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * Keeps plain sums of what was done, with pencil and paper. Custody and what is missing of a person are one sum here,
 * because which of the two a late fact meets depends on when it arrives; together they never do.
 */
final class Auditor {
    private record Piece(String reel, long mm) {}

    private static final class Hanging {
        final int tree;
        Piece tape;
        Piece mesh;

        Hanging(int tree, Piece tape, Piece mesh) {
            this.tree = tree;
            this.tape = tape;
            this.mesh = mesh;
        }
    }

    private final Map<String, Map<String, Long>> byReel = new TreeMap<>();
    private final Map<Integer, Hanging> bands = new HashMap<>();
    private final Set<Integer> bandsEver = new HashSet<>();
    private final Set<Integer> received = new HashSet<>();
    private final Map<Integer, List<Piece>> bags = new HashMap<>();
    private int loads;

    /** Reel, then place (custody and missing as {@code with:}), then millimetres; nothing that is zero. */
    Map<String, Map<String, Long>> expected() {
        byReel.values().forEach(places -> places.values().removeIf(mm -> mm == 0));
        byReel.values().removeIf(Map::isEmpty);
        return byReel;
    }

    boolean canReceive(Step.Receive step) {
        return !received.contains(step.reel());
    }

    boolean canHandOut(Step.HandOut step) {
        return received.contains(step.reel()) && at(reel(step.reel()), "depot") > 0;
    }

    boolean canFit(Step.Fit step) {
        return !bandsEver.contains(step.band());
    }

    boolean isUp(int band) {
        return bands.containsKey(band);
    }

    boolean hasContents(int bag) {
        return !bags.getOrDefault(bag, List.of()).isEmpty();
    }

    void received(Step.Receive step) {
        received.add(step.reel());
        move(reel(step.reel()), "supplier", "depot", step.mm());
    }

    void handedOut(Step.HandOut step) {
        move(reel(step.reel()), "depot", "with:" + step.person(), at(reel(step.reel()), "depot"));
    }

    void fitted(Step.Fit step) {
        bandsEver.add(step.band());
        Piece tape = new Piece(reel(step.tapeReel()), step.tapeMm());
        Piece mesh = new Piece(reel(step.meshReel()), step.meshMm());
        for (Piece piece : List.of(tape, mesh)) {
            move(piece.reel(), "with:" + step.person(), "tree:" + step.tree(), piece.mm());
        }
        bands.put(step.band(), new Hanging(step.tree(), tape, mesh));
    }

    void replaced(Step.ReplaceTape step) {
        Hanging hanging = Objects.requireNonNull(bands.get(step.band()), "band is up");
        move(hanging.tape.reel(), "tree:" + hanging.tree, "bag:" + step.bag(), hanging.tape.mm());
        into(step.bag(), hanging.tape);
        hanging.tape = new Piece(reel(step.reel()), step.mm());
        move(hanging.tape.reel(), "with:" + step.person(), "tree:" + hanging.tree, step.mm());
    }

    void takenDown(Step.TakeDown step) {
        Hanging hanging = Objects.requireNonNull(bands.remove(step.band()), "band is up");
        move(hanging.tape.reel(), "tree:" + hanging.tree, "bag:" + step.bag(), hanging.tape.mm());
        into(step.bag(), hanging.tape);
        String meshGoes = step.meshAgain() ? "with:" + step.person() : "bag:" + step.bag();
        move(hanging.mesh.reel(), "tree:" + hanging.tree, meshGoes, hanging.mesh.mm());
        if (!step.meshAgain()) {
            into(step.bag(), hanging.mesh);
        }
    }

    /** The number of the load; every load takes whatever is in the bag. */
    int disposed(Step.Dispose step) {
        int load = loads++;
        for (Piece piece : bags.getOrDefault(step.bag(), List.of())) {
            move(piece.reel(), "bag:" + step.bag(), "disposed", piece.mm());
        }
        bags.remove(step.bag());
        return load;
    }

    void returned(Step.Return step) {
        move(reel(step.reel()), "with:" + step.person(), "depot", step.mm());
    }

    private void into(int bag, Piece piece) {
        bags.computeIfAbsent(bag, unused -> new ArrayList<>()).add(piece);
    }

    private long at(String reel, String place) {
        return byReel.getOrDefault(reel, Map.of()).getOrDefault(place, 0L);
    }

    private void move(String reel, String source, String target, long mm) {
        Map<String, Long> places = byReel.computeIfAbsent(reel, unused -> new TreeMap<>());
        places.merge(source, -mm, Long::sum);
        places.merge(target, mm, Long::sum);
    }

    static String reel(int number) {
        return "R" + number;
    }
}

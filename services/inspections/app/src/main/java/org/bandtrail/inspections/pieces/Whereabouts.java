package org.bandtrail.inspections.pieces;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Compares where the books had every portion with where it must be once one more fact is known. Invariant: the moves of
 * all facts, in whatever order they arrive, sum to the same places, because each comparison starts where the last one
 * ended.
 */
public final class Whereabouts {
    private Whereabouts() {}

    /**
     * The moves that become known with one more fact.
     *
     * @param known the facts so far
     * @param arriving one more
     * @return moves by the fact they belong to, in the order of the portions; a fitting never appears, because another
     *     service tells its moves
     */
    public static Map<PieceFact, List<Move>> learn(List<PieceFact> known, PieceFact arriving) {
        List<PieceFact> all = new ArrayList<>(known);
        all.add(arriving);
        Map<String, Track> before = Track.of(known);
        Map<PieceFact, List<Move>> moves = new LinkedHashMap<>();
        Track.of(all).forEach((portion, track) -> compare(before.get(portion), track, moves));
        return moves;
    }

    /** What hangs on the tree when these facts are all there are. */
    public static List<Portion> hanging(List<PieceFact> facts) {
        return Track.of(facts).values().stream()
                .filter(Track::hangs)
                .map(Track::portion)
                .toList();
    }

    private static void compare(@Nullable Track before, Track after, Map<PieceFact, List<Move>> moves) {
        List<Track.Stop> travelled = before == null ? after.stops().subList(0, 1) : before.stops();
        List<Track.Stop> stops = after.stops();
        if (startsWith(stops, travelled)) {
            for (int i = travelled.size(); i < stops.size(); i++) {
                add(stops.get(i).cause(), after.portion(), stops.get(i - 1), stops.get(i), moves);
            }
        } else {
            Track.Stop wrong = travelled.getLast();
            Track.Stop right = stops.getLast();
            boolean toldElsewhere = right.cause().kind() == PieceFact.Kind.FITTED;
            add(toldElsewhere ? wrong.cause() : right.cause(), after.portion(), wrong, right, moves);
        }
    }

    private static boolean startsWith(List<Track.Stop> stops, List<Track.Stop> travelled) {
        if (stops.size() < travelled.size()) {
            return false;
        }
        for (int i = 0; i < travelled.size(); i++) {
            if (!stops.get(i).place().equals(travelled.get(i).place())) {
                return false;
            }
        }
        return true;
    }

    private static void add(
            PieceFact cause, Portion portion, Track.Stop source, Track.Stop target, Map<PieceFact, List<Move>> moves) {
        if (!source.place().equals(target.place())) {
            moves.computeIfAbsent(cause, key -> new ArrayList<>())
                    .add(new Move(portion, source.place(), target.place()));
        }
    }
}

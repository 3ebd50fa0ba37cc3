package org.bandtrail.supplystock.causes;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.Reel;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;

/** Books kept by the real rules of reels, and the open questions in them. */
final class BooksInATest {
    private final Map<ReelId, Reel> reels = new TreeMap<>(Comparator.comparing(ReelId::value));
    private final List<Told> told = new ArrayList<>();
    private long position;

    void tell(ReelId reel, ReelCommand command) {
        Reel before = reels.getOrDefault(reel, Reel.UNKNOWN);
        Reel after = before;
        for (ReelEvent event : before.decide(command)) {
            after = after.evolve(event);
            position++;
            String fact = command instanceof ReelCommand.RecordFact recorded ? recorded.fact() : null;
            for (Move move : event.entry().moves()) {
                told.add(line(reel, fact, move, event.entry()));
            }
        }
        reels.put(reel, after);
    }

    private Told line(ReelId reel, @org.jspecify.annotations.Nullable String fact, Move move, Entry entry) {
        return new Told(
                position,
                reel.value(),
                null,
                fact == null ? "moved" : "fitted",
                fact,
                move.source(),
                move.target(),
                move.quantity(),
                entry.occurred().happened(),
                entry.occurred().recorded());
    }

    /** Every place where books and field disagree, as a case for the finder. */
    List<Case> open() {
        List<Case> open = new ArrayList<>();
        reels.forEach((id, reel) -> reel.holding().whereabouts().balances().forEach((place, balance) -> {
            if (reel.holding().disagrees(place)) {
                open.add(caseOf(id, place, balance));
            }
        }));
        return open;
    }

    private Case caseOf(ReelId id, Place place, long gap) {
        List<Told> moves = suspect(id).told();
        Instant since = moves.stream()
                .filter(move -> place.equals(move.source()) || place.equals(move.target()))
                .map(Told::happened)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        Custody custody = new Custody(place);
        return new Case(
                suspect(id),
                false,
                place,
                gap,
                since,
                reels.keySet().stream()
                        .filter(other -> !other.equals(id))
                        .map(this::suspect)
                        .toList(),
                all().stream()
                        .filter(move ->
                                custody.holds(move.source()) && move.target().kind() == PlaceKind.TREE)
                        .toList());
    }

    private Suspect suspect(ReelId id) {
        Reel reel = Objects.requireNonNull(reels.get(id));
        return new Suspect(
                id.value(),
                kind(id),
                reel.holding().whereabouts().balances(),
                all().stream().filter(move -> move.holding().equals(id.value())).toList());
    }

    private @org.jspecify.annotations.Nullable String kind(ReelId id) {
        var kind = Objects.requireNonNull(reels.get(id)).kind();
        return kind == null ? null : kind.name();
    }

    private List<Told> all() {
        return told.stream()
                .map(move -> new Told(
                        move.position(),
                        move.holding(),
                        kind(new ReelId(move.holding())),
                        move.what(),
                        move.fact(),
                        move.source(),
                        move.target(),
                        move.quantity(),
                        move.happened(),
                        move.recorded()))
                .toList();
    }
}

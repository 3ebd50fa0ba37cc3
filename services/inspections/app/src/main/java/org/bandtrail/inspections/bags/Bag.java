package org.bandtrail.inspections.bags;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.bandtrail.inspections.bags.BagCommand.NoteContents;
import org.bandtrail.inspections.bags.BagCommand.TakeAway;
import org.bandtrail.inspections.bags.BagEvent.ContentsFollowed;
import org.bandtrail.inspections.bags.BagEvent.ContentsNoted;
import org.bandtrail.inspections.bags.BagEvent.TakenAway;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.Places;
import org.bandtrail.kernel.BagId;

/**
 * The rules of one waste bag. A bag can be emptied and used again, so each portion belongs to the first load that left
 * at or after it went in; in whatever order contents and loads are told, they end in the same places.
 *
 * @param deposits what went in, in the order in which it was told
 * @param departures loads it left with, in order of time
 */
public record Bag(List<Deposit> deposits, List<TakenAway> departures) {
    /** A bag nobody has told of. */
    public static final Bag UNKNOWN = new Bag(List.of(), List.of());

    /**
     * What becomes known by a command; nothing if the bag is known to have left with this load.
     *
     * @throws IllegalStateException if contents are taken back that were never told
     */
    public List<BagEvent> decide(BagCommand command) {
        return switch (command) {
            case NoteContents told -> note(told);
            case TakeAway told -> takeAway(told);
        };
    }

    /** The bag after an event. */
    public Bag evolve(BagEvent event) {
        return switch (event) {
            case ContentsNoted e -> new Bag(after(e.bag(), e.moves(), e), departures);
            case TakenAway e -> new Bag(deposits, departuresWith(e));
            case ContentsFollowed _ -> this;
        };
    }

    private List<BagEvent> note(NoteContents told) {
        ContentsNoted noted = new ContentsNoted(told.bag(), told.moves(), told.doer(), told.occurred());
        String bag = Places.bag(told.bag());
        List<Move> follow = new ArrayList<>();
        for (Move move : told.moves()) {
            boolean in = move.target().equals(bag);
            Deposit deposit = in ? new Deposit(move.portion(), told.occurred().happened()) : latest(move);
            String place = deposit.place(told.bag(), departures);
            if (!place.equals(bag)) {
                follow.add(in ? new Move(move.portion(), bag, place) : new Move(move.portion(), place, bag));
            }
        }
        List<BagEvent> events = new ArrayList<>();
        events.add(noted);
        for (TakenAway gone : departures) {
            String load = Places.disposed(gone.load());
            List<Move> its = follow.stream()
                    .filter(move -> move.target().equals(load) || move.source().equals(load))
                    .toList();
            if (!its.isEmpty()) {
                events.add(new ContentsFollowed(
                        told.bag(), gone.load(), gone.carrier(), its, gone.doer(), told.occurred()));
            }
        }
        return events;
    }

    private List<BagEvent> takeAway(TakeAway told) {
        if (departures.stream().anyMatch(gone -> gone.load().equals(told.load()))) {
            return List.of();
        }
        TakenAway empty = new TakenAway(
                told.bag(), told.load(), told.carrier(), List.of(), Set.of(), told.doer(), told.occurred());
        List<TakenAway> then = departuresWith(empty);
        List<Move> moves = new ArrayList<>();
        for (Deposit deposit : deposits) {
            String source = deposit.place(told.bag(), departures);
            String target = deposit.place(told.bag(), then);
            if (!source.equals(target)) {
                moves.add(new Move(deposit.portion(), source, target));
            }
        }
        return List.of(new TakenAway(
                told.bag(), told.load(), told.carrier(), moves, flags(moves), told.doer(), told.occurred()));
    }

    private Set<BagFlag> flags(List<Move> moves) {
        Set<BagFlag> flags = EnumSet.noneOf(BagFlag.class);
        if (moves.isEmpty()) {
            flags.add(departures.isEmpty() ? BagFlag.BAG_NOT_KNOWN_YET : BagFlag.BAG_ALREADY_GONE);
        }
        return flags;
    }

    private List<TakenAway> departuresWith(TakenAway gone) {
        List<TakenAway> more = new ArrayList<>(departures);
        more.add(gone);
        more.sort(Comparator.comparing((TakenAway each) -> each.occurred().happened())
                .thenComparing(each -> each.load().value()));
        return List.copyOf(more);
    }

    private Deposit latest(Move takenBack) {
        return deposits.reversed().stream()
                .filter(deposit -> deposit.portion().equals(takenBack.portion()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("%s was never told to be there.".formatted(takenBack)));
    }

    private List<Deposit> after(BagId bag, List<Move> moves, ContentsNoted noted) {
        List<Deposit> more = new ArrayList<>(deposits);
        for (Move move : moves) {
            if (Objects.equals(move.bagFilled(), bag.value())) {
                more.add(new Deposit(move.portion(), noted.occurred().happened()));
            } else {
                more.remove(latest(move));
            }
        }
        return List.copyOf(more);
    }
}

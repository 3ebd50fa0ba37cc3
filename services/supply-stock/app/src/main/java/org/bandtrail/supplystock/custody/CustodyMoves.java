package org.bandtrail.supplystock.custody;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;

/** Reads from an event what went into, within or out of people's care. */
final class CustodyMoves {
    private CustodyMoves() {}

    static List<CustodyStep> of(StoredEvent stored) {
        return switch (stored.payload()) {
            case ReelEvent event -> {
                String kit =
                        event instanceof ReelEvent.HandedOut out ? out.kit().value() : null;
                boolean measured = event instanceof ReelEvent.Returned;
                yield steps(stored, "reel", event.reelId().value(), event.entry(), kit, measured);
            }
            case BatchEvent event -> {
                String kit =
                        event instanceof BatchEvent.HandedOut out ? out.kit().value() : null;
                boolean measured = event instanceof BatchEvent.Returned;
                yield steps(stored, "batch", event.batchId().value(), event.entry(), kit, measured);
            }
            default -> List.of();
        };
    }

    private static List<CustodyStep> steps(
            StoredEvent stored, String holding, String id, Entry entry, @Nullable String kit, boolean measured) {
        List<CustodyStep> steps = new ArrayList<>();
        for (Move move : entry.moves()) {
            String from = personOf(move.source());
            String to = personOf(move.target());
            Station near = own(from == null ? move.target() : move.source());
            if (from != null) {
                boolean within = from.equals(to);
                Station target = within ? own(move.target()) : other(move.target(), near);
                CustodyStep.Held held = new CustodyStep.Held(holding, id, from);
                String what = measured ? "returned" : target.word().replace('-', ' ');
                steps.add(step(
                        stored, steps.size(), held, near, target, move, move.target(), what, kit, measured, entry));
            }
            if (to != null && !to.equals(from)) {
                Station target = own(move.target());
                Station source = kit == null ? other(move.source(), target) : Station.HANDED_OUT;
                CustodyStep.Held held = new CustodyStep.Held(holding, id, to);
                String what = source == Station.FITTED
                        ? "put back into use"
                        : source.word().replace('-', ' ');
                steps.add(step(
                        stored, steps.size(), held, source, target, move, move.source(), what, kit, measured, entry));
            }
        }
        return steps;
    }

    private static CustodyStep step(
            StoredEvent stored,
            int step,
            CustodyStep.Held held,
            Station source,
            Station target,
            Move move,
            Place far,
            String what,
            @Nullable String kit,
            boolean measured,
            Entry entry) {
        return new CustodyStep(
                stored.position(),
                step,
                held,
                source,
                target,
                move.quantity(),
                far.toString(),
                what,
                kit,
                measured,
                entry.occurred().happened(),
                entry.occurred().recorded());
    }

    private static @Nullable String personOf(Place place) {
        return place.kind() == PlaceKind.CREW || place.kind() == PlaceKind.MISSING ? place.id() : null;
    }

    private static Station own(Place place) {
        return place.kind() == PlaceKind.CREW ? Station.WITH_PERSON : Station.MISSING;
    }

    /** What the far end of a move means to the person; the books' own corrections of missing settle it. */
    private static Station other(Place far, Station near) {
        return switch (far.kind()) {
            case TREE -> Station.FITTED;
            case BAG -> Station.SCRAPPED;
            case DEPOT -> near == Station.WITH_PERSON ? Station.RETURNED : Station.ELSEWHERE;
            case WRITTEN_OFF, SUPPLIER -> Station.SETTLED;
            default -> Station.ELSEWHERE;
        };
    }
}

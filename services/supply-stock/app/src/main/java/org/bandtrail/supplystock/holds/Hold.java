package org.bandtrail.supplystock.holds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/**
 * The rules of the holds on one reel or batch.
 *
 * @param portions what each kit has of it, by kit
 */
public record Hold(SortedMap<String, Portion> portions) {
    /** Nobody has it reserved. */
    public static final Hold NONE = new Hold(new TreeMap<>());

    /**
     * What one kit has.
     *
     * @param quantity millimetres of a reel, pieces of a batch
     * @param until when it lapses
     */
    public record Portion(long quantity, Instant until) {
        boolean lapsed(Instant now) {
            return !until.isAfter(now);
        }
    }

    /**
     * What a command makes happen.
     *
     * @throws HoldRefused if the wish cannot be granted
     */
    public List<HoldEvent> decide(HoldCommand command) {
        return switch (command) {
            case HoldCommand.Place place -> place(place);
            case HoldCommand.Release release ->
                portions.containsKey(release.kit().value())
                        ? List.of(new HoldEvent.Ended(
                                release.held(),
                                release.kit(),
                                HoldEvent.Why.RELEASED,
                                release.by(),
                                release.occurred()))
                        : List.of();
            case HoldCommand.TakeOut out -> takeOut(out);
        };
    }

    private List<HoldEvent> place(HoldCommand.Place place) {
        List<HoldEvent> events = lapsed(place.held(), place.kit(), place.by(), place.occurred());
        if (place.quantity() <= 0 || place.there() <= 0) {
            throw new HoldRefused.NotInTheDepot(place.held(), place.depot());
        }
        refuseIfOthersHave(place.held(), place.kit(), place.quantity(), place.there(), place.occurred());
        if (place.quantity() > place.there()) {
            throw new HoldRefused.TooLittleLeft(place.held(), place.quantity(), place.there());
        }
        events.add(new HoldEvent.Placed(
                place.held(), place.kit(), place.quantity(), place.until(), place.by(), place.occurred()));
        return events;
    }

    private List<HoldEvent> takeOut(HoldCommand.TakeOut out) {
        List<HoldEvent> events = lapsed(out.held(), out.kit(), out.by(), out.occurred());
        refuseIfOthersHave(out.held(), out.kit(), out.quantity(), out.there(), out.occurred());
        if (portions.containsKey(out.kit().value())) {
            events.add(new HoldEvent.Ended(out.held(), out.kit(), HoldEvent.Why.HANDED_OUT, out.by(), out.occurred()));
        }
        return events;
    }

    private void refuseIfOthersHave(HeldId held, KitId kit, long wanted, long there, Occurred occurred) {
        long others = 0;
        for (Map.Entry<String, Portion> each : portions.entrySet()) {
            if (each.getKey().equals(kit.value()) || each.getValue().lapsed(occurred.recorded())) {
                continue;
            }
            if (held.whole()) {
                throw new HoldRefused.ReservedForAnotherKit(
                        held, new KitId(each.getKey()), each.getValue().until());
            }
            others += each.getValue().quantity();
        }
        if (others > 0 && wanted + others > there) {
            throw new HoldRefused.TooLittleLeft(held, wanted, Math.max(0, there - others));
        }
    }

    /** Holds of other kits whose time is over end now, so that the books say why somebody else gets it. */
    private List<HoldEvent> lapsed(HeldId held, KitId kit, PersonId by, Occurred occurred) {
        List<HoldEvent> events = new ArrayList<>();
        portions.forEach((other, portion) -> {
            if (!other.equals(kit.value()) && portion.lapsed(occurred.recorded())) {
                events.add(new HoldEvent.Ended(held, new KitId(other), HoldEvent.Why.LAPSED, by, occurred));
            }
        });
        return events;
    }

    /** The holds after an event. */
    public Hold evolve(HoldEvent event) {
        SortedMap<String, Portion> next = new TreeMap<>(portions);
        switch (event) {
            case HoldEvent.Placed placed ->
                next.put(placed.kit().value(), new Portion(placed.quantity(), placed.until()));
            case HoldEvent.Ended ended -> next.remove(ended.kit().value());
        }
        return new Hold(next);
    }
}

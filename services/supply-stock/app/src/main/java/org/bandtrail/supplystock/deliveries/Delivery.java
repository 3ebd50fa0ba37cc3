package org.bandtrail.supplystock.deliveries;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.supplystock.holdings.PlaceKind;

/**
 * The rules of a delivery.
 *
 * @param lines as recorded, empty until recorded
 * @param state where each reel and batch stands, by its key
 */
public record Delivery(List<DeliveredLine> lines, Map<String, State> state) {
    /** A delivery nobody has recorded. */
    public static final Delivery UNKNOWN = new Delivery(List.of(), Map.of());

    /** Where a reel or batch of a delivery stands. */
    public enum State {
        /** Apart from the stock until somebody accepts it. */
        SET_ASIDE("set aside"),
        /** In stock. */
        ACCEPTED("accepted"),
        /** With the supplier again. */
        SENT_BACK("sent back");

        private final String word;

        State(String word) {
            this.word = word;
        }

        /** The state in words, as kept in tables and sent in answers. */
        public String word() {
            return word;
        }
    }

    /**
     * What a command makes happen.
     *
     * @throws DeliveryRefused if the wish cannot be granted
     */
    public List<DeliveryEvent> decide(DeliveryCommand command) {
        return switch (command) {
            case DeliveryCommand.Receive wish -> record(wish);
            case DeliveryCommand.Accept wish -> accept(wish);
            case DeliveryCommand.NoteReleased fact ->
                fact.whole() && state.get(fact.key()) == State.SET_ASIDE
                        ? List.of(new DeliveryEvent.Released(
                                fact.deliveryId(), fact.key(), fact.into(), fact.by(), fact.occurred()))
                        : List.of();
            case DeliveryCommand.SendBack wish -> sendBack(wish);
        };
    }

    private List<DeliveryEvent> record(DeliveryCommand.Receive wish) {
        if (!lines.isEmpty()) {
            throw new DeliveryRefused.DeliveryRecordedAlready(wish.deliveryId());
        }
        Set<String> keys = new HashSet<>();
        for (DeliveredLine line : wish.lines()) {
            for (DeliveredHolding each : line.holdings()) {
                if (each.quantity() <= 0) {
                    throw new DeliveryRefused.NothingOnIt(wish.deliveryId(), each.key());
                }
                if (!keys.add(each.key())) {
                    throw new DeliveryRefused.IdentityTwice(wish.deliveryId(), each.key());
                }
            }
        }
        if (keys.isEmpty()
                || wish.lines().stream().anyMatch(line -> line.holdings().isEmpty())) {
            throw new DeliveryRefused.DeliveryEmpty(wish.deliveryId());
        }
        return List.of(new DeliveryEvent.Recorded(
                wish.deliveryId(),
                wish.supplier(),
                wish.purchase(),
                wish.depot(),
                wish.deliveryNote(),
                List.copyOf(wish.lines()),
                List.copyOf(wish.findings()),
                wish.by(),
                wish.occurred()));
    }

    private List<DeliveryEvent> accept(DeliveryCommand.Accept wish) {
        need(wish.deliveryId(), wish.keys());
        for (String key : wish.keys()) {
            State now = state.get(key);
            if (now != State.SET_ASIDE) {
                throw new DeliveryRefused.NotSetAside(
                        wish.deliveryId(), key, String.valueOf(now == null ? null : now.word()));
            }
        }
        return List.of(new DeliveryEvent.Accepted(
                wish.deliveryId(), List.copyOf(wish.keys()), wish.into(), wish.by(), wish.occurred()));
    }

    private List<DeliveryEvent> sendBack(DeliveryCommand.SendBack wish) {
        need(wish.deliveryId(), wish.keys());
        if (wish.reason().isBlank()) {
            throw new DeliveryRefused.SentBackWithoutReason(wish.deliveryId());
        }
        for (String key : wish.keys()) {
            if (state.get(key) == State.SENT_BACK) {
                throw new DeliveryRefused.SentBackAlready(wish.deliveryId(), key);
            }
        }
        return List.of(new DeliveryEvent.SentBack(
                wish.deliveryId(), List.copyOf(wish.keys()), wish.reason().strip(), wish.by(), wish.occurred()));
    }

    private void need(DeliveryId delivery, List<String> keys) {
        if (keys.isEmpty()) {
            throw new DeliveryRefused.NothingChosen(delivery);
        }
        Set<String> seen = new HashSet<>();
        for (String key : keys) {
            if (!state.containsKey(key)) {
                throw new DeliveryRefused.NotInDelivery(delivery, key);
            }
            if (!seen.add(key)) {
                throw new DeliveryRefused.IdentityTwice(delivery, key);
            }
        }
    }

    /** How many reels or batches of a line went back to the supplier. */
    public long sentBackOf(DeliveredLine line) {
        return line.holdings().stream()
                .filter(each -> state.get(each.key()) == State.SENT_BACK)
                .count();
    }

    /** The delivery after an event. */
    public Delivery evolve(DeliveryEvent event) {
        return switch (event) {
            case DeliveryEvent.Recorded recorded -> recorded(recorded.lines());
            case DeliveryEvent.Accepted accepted -> with(accepted.keys(), State.ACCEPTED);
            case DeliveryEvent.Released released -> with(List.of(released.key()), State.ACCEPTED);
            case DeliveryEvent.SentBack back -> with(back.keys(), State.SENT_BACK);
        };
    }

    private static Delivery recorded(List<DeliveredLine> lines) {
        Map<String, State> state = new HashMap<>();
        for (DeliveredLine line : lines) {
            for (DeliveredHolding each : line.holdings()) {
                state.put(each.key(), each.into().kind() == PlaceKind.SET_ASIDE ? State.SET_ASIDE : State.ACCEPTED);
            }
        }
        return new Delivery(lines, Map.copyOf(state));
    }

    private Delivery with(List<String> keys, State now) {
        Map<String, State> after = new HashMap<>(state);
        keys.forEach(key -> after.put(key, now));
        return new Delivery(lines, Map.copyOf(after));
    }
}

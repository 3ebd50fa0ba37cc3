package org.bandtrail.supplystock.purchases;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * The rules of an order.
 *
 * @param lines as ordered, empty until ordered
 * @param received what has come of each line, less what went back
 * @param ended closed or cancelled, null while neither
 */
public record Purchase(
        List<OrderedLine> lines,
        Map<Integer, Received> received,
        @Nullable PurchaseState ended) {
    /** An order nobody has placed. */
    public static final Purchase UNKNOWN = new Purchase(List.of(), Map.of(), null);

    /** Where the order stands. */
    public PurchaseState state() {
        if (ended != null) {
            return ended;
        }
        if (received.values().stream().allMatch(each -> each.units() <= 0 && each.quantity() <= 0)) {
            return PurchaseState.ORDERED;
        }
        return lines.stream().allMatch(line -> remaining(line) == 0)
                ? PurchaseState.RECEIVED
                : PurchaseState.PARTLY_RECEIVED;
    }

    private long remaining(OrderedLine line) {
        Received come = received.getOrDefault(line.line(), new Received(line.line(), 0, 0));
        return line.remaining(come.units(), come.quantity());
    }

    /**
     * What a command makes happen.
     *
     * @throws PurchaseRefused if the wish cannot be granted
     */
    public List<PurchaseEvent> decide(PurchaseCommand command) {
        return switch (command) {
            case PurchaseCommand.Place place -> place(place);
            case PurchaseCommand.NoteDelivery fact -> {
                known(fact.purchaseId(), fact.lines());
                yield List.of(new PurchaseEvent.Delivered(
                        fact.purchaseId(), fact.delivery(), fact.lines(), fact.by(), fact.occurred()));
            }
            case PurchaseCommand.NoteSentBack fact -> {
                known(fact.purchaseId(), fact.lines());
                yield List.of(new PurchaseEvent.SentBack(
                        fact.purchaseId(), fact.delivery(), fact.lines(), fact.by(), fact.occurred()));
            }
            case PurchaseCommand.Expect wish -> expect(wish);
            case PurchaseCommand.Close wish -> close(wish);
            case PurchaseCommand.Cancel wish -> cancel(wish);
        };
    }

    private List<PurchaseEvent> place(PurchaseCommand.Place place) {
        if (!lines.isEmpty()) {
            throw new PurchaseRefused.PurchaseOrderedAlready(place.purchaseId());
        }
        if (place.lines().isEmpty()) {
            throw new PurchaseRefused.PurchaseEmpty(place.purchaseId());
        }
        Set<Integer> numbers = new HashSet<>();
        for (OrderedLine line : place.lines()) {
            if (line.units() < 1 || line.ordered() < 1 || !numbers.add(line.line())) {
                throw new PurchaseRefused.LineWithoutQuantity(place.purchaseId(), line.line(), line.units());
            }
            if (line.unitPrice() < 0) {
                throw new PurchaseRefused.PriceBelowZero(
                        place.purchaseId(), line.line(), Money.of(line.unitPrice(), place.currency()));
            }
        }
        return List.of(new PurchaseEvent.Ordered(
                place.purchaseId(),
                place.supplier(),
                place.depot(),
                place.currency(),
                List.copyOf(place.lines()),
                place.expectedOn(),
                place.by(),
                place.occurred()));
    }

    private void known(PurchaseId purchase, List<Received> told) {
        if (lines.isEmpty()) {
            throw new PurchaseRefused.PurchaseUnknown(purchase);
        }
        for (Received each : told) {
            if (lines.stream().noneMatch(line -> line.line() == each.line())) {
                throw new PurchaseRefused.LineUnknown(purchase, each.line());
            }
        }
    }

    private List<PurchaseEvent> expect(PurchaseCommand.Expect wish) {
        wished(wish.purchaseId(), wish.reason());
        return List.of(new PurchaseEvent.Expected(
                wish.purchaseId(), wish.expectedOn(), wish.reason().strip(), wish.by(), wish.occurred()));
    }

    private List<PurchaseEvent> close(PurchaseCommand.Close wish) {
        wished(wish.purchaseId(), wish.reason());
        return List.of(new PurchaseEvent.Closed(wish.purchaseId(), wish.reason().strip(), wish.by(), wish.occurred()));
    }

    private List<PurchaseEvent> cancel(PurchaseCommand.Cancel wish) {
        wished(wish.purchaseId(), wish.reason());
        if (state() != PurchaseState.ORDERED) {
            throw new PurchaseRefused.SomethingHasCome(wish.purchaseId());
        }
        return List.of(
                new PurchaseEvent.Cancelled(wish.purchaseId(), wish.reason().strip(), wish.by(), wish.occurred()));
    }

    private void wished(PurchaseId purchase, String reason) {
        known(purchase, List.of());
        if (!state().open()) {
            throw new PurchaseRefused.NothingToCome(purchase, state());
        }
        if (reason.isBlank()) {
            throw new PurchaseRefused.ReasonMissing(purchase);
        }
    }

    /** The order after an event. */
    public Purchase evolve(PurchaseEvent event) {
        return switch (event) {
            case PurchaseEvent.Ordered ordered -> new Purchase(ordered.lines(), Map.of(), null);
            case PurchaseEvent.Delivered delivered -> after(delivered.lines(), 1);
            case PurchaseEvent.SentBack back -> after(back.lines(), -1);
            case PurchaseEvent.Expected unused -> this;
            case PurchaseEvent.Closed unused -> new Purchase(lines, received, PurchaseState.CLOSED);
            case PurchaseEvent.Cancelled unused -> new Purchase(lines, received, PurchaseState.CANCELLED);
        };
    }

    private Purchase after(List<Received> told, int sign) {
        Map<Integer, Received> now = new HashMap<>(received);
        for (Received each : told) {
            now.merge(
                    each.line(),
                    new Received(each.line(), sign * each.units(), sign * each.quantity()),
                    (one, other) ->
                            new Received(one.line(), one.units() + other.units(), one.quantity() + other.quantity()));
        }
        return new Purchase(lines, Map.copyOf(now), ended);
    }
}

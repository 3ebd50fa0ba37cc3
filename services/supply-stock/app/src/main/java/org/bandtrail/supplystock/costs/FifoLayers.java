package org.bandtrail.supplystock.costs;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.Money;

/**
 * Stock as layers of receipts, each with its own cost, from which quantities are drawn.
 *
 * <p>{@link #draw} takes the oldest layer first (FIFO: IAS 2 Inventories paragraph 27, allowed for interchangeable
 * items by paragraph 25); {@link #drawFrom} takes a named layer (specific identification, paragraphs 23-24, required
 * for goods set apart for a project). Costs are perpetual: each draw is priced when it happens. Inside a layer costs
 * are cumulative (see {@link PieceCost}), so received value = value in stock + value drawn, to the minor unit. "Oldest"
 * is the order in which layers were received here. Last-in-first-out is not offered: IAS 2 does not allow it.
 *
 * @param layers oldest first; exhausted layers stay, with nothing left
 */
public record FifoLayers(List<Layer> layers) {
    public static final FifoLayers EMPTY = new FifoLayers(List.of());

    /**
     * One receipt.
     *
     * @param id names the receipt, for example a batch
     * @param quantity what was received, 1 or more
     * @param cost what it cost altogether
     * @param drawn how much of it is gone, 0 to quantity
     */
    public record Layer(String id, long quantity, Money cost, long drawn) {
        public Layer {
            if (quantity < 1 || cost.minor() < 0) {
                throw new IllegalArgumentException(
                        "Layer %s has quantity [%d] and cost [%s]. Give 1 or more for 0 or more."
                                .formatted(id, quantity, cost));
            }
            if (drawn < 0 || drawn > quantity) {
                throw new IllegalArgumentException(
                        "Layer %s has [%d] drawn of %d. Give 0 to %d.".formatted(id, drawn, quantity, quantity));
            }
        }

        /** How much of it is still in stock. */
        public long left() {
            return quantity - drawn;
        }

        /** What the part still in stock cost. */
        public Money valueLeft() {
            return Money.of(pieceCost().between(drawn, quantity), cost.currency());
        }

        private PieceCost pieceCost() {
            return new PieceCost(cost.minor(), quantity);
        }
    }

    /** A part of a draw: so much of one layer, at that layer's cost. */
    public record Draw(String layer, long quantity, Money cost) {}

    /** The outcome of drawing: what was taken from where, and the stock that is left. */
    public record Drawn(List<Draw> draws, FifoLayers left) {}

    public FifoLayers {
        layers = List.copyOf(layers);
    }

    /**
     * Adds the newest layer.
     *
     * @throws IllegalArgumentException if the id is already there, the quantity is below 1 or the cost below 0
     */
    public FifoLayers receive(String id, long quantity, Money cost) {
        if (layers.stream().anyMatch(layer -> layer.id().equals(id))) {
            throw new IllegalArgumentException(
                    "Layer %s was received before. Give each receipt its own id.".formatted(id));
        }
        List<Layer> all = new ArrayList<>(layers);
        all.add(new Layer(id, quantity, cost, 0));
        return new FifoLayers(all);
    }

    /** How much is in stock over all layers. */
    public long quantityLeft() {
        return layers.stream().mapToLong(Layer::left).sum();
    }

    /** What the stock cost; an empty stock is worth 0 of the given currency. */
    public Money valueLeft(String currency) {
        return layers.stream().map(Layer::valueLeft).reduce(Money.zero(currency), Money::plus);
    }

    /**
     * Takes a quantity, oldest layer first.
     *
     * @throws IllegalArgumentException if the quantity is below 1 or more than {@link #quantityLeft}
     */
    public Drawn draw(long quantity) {
        return taken(quantity, layers);
    }

    /**
     * Takes a quantity from one named layer.
     *
     * @throws IllegalArgumentException if the layer is unknown, the quantity below 1 or more than it has left
     */
    public Drawn drawFrom(String id, long quantity) {
        List<Layer> named =
                layers.stream().filter(layer -> layer.id().equals(id)).toList();
        if (named.isEmpty()) {
            throw new IllegalArgumentException("Layer [%s] is not in stock. Receive it first.".formatted(id));
        }
        return taken(quantity, named);
    }

    private Drawn taken(long quantity, List<Layer> from) {
        long there = from.stream().mapToLong(Layer::left).sum();
        if (quantity < 1 || quantity > there) {
            throw new IllegalArgumentException(
                    "Quantity [%d] cannot be drawn. Give 1 to %d.".formatted(quantity, there));
        }
        List<Draw> draws = new ArrayList<>();
        List<Layer> after = new ArrayList<>(layers);
        long missing = quantity;
        for (Layer layer : from) {
            long take = Math.min(missing, layer.left());
            if (take > 0) {
                long drawn = layer.drawn() + take;
                long cost = layer.pieceCost().between(layer.drawn(), drawn);
                draws.add(new Draw(layer.id(), take, Money.of(cost, layer.cost().currency())));
                after.set(layers.indexOf(layer), new Layer(layer.id(), layer.quantity(), layer.cost(), drawn));
                missing -= take;
            }
        }
        return new Drawn(List.copyOf(draws), new FifoLayers(after));
    }
}

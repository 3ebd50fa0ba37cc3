package org.bandtrail.supplystock.ledger;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.costs.FifoLayers;

/**
 * The cost of a fastener, over all batches of the item in one currency. The pool is a list of layers in the order they
 * came; under the moving average all layers are one. An issue under the average costs round(value x pieces / pieces in
 * stock), halves up, and the last piece takes all that is left; oldest first is {@link FifoLayers}. Either way value in
 * less value out is the value left, to the minor unit, and a change of method between two years needs no revaluation.
 *
 * <p>Pieces used beyond what the books have cost nothing then; what is received next makes those pay who used them.
 */
final class Pool {
    /** An item in one currency. */
    record Key(String material, String currency) {
        /** As it stands in tables. */
        String id() {
            return material + " " + currency;
        }
    }

    /** Pieces of one receipt, and what they cost; 0 pieces where value waits for pieces. */
    record Layer(String batch, long quantity, long minor) {}

    final Stock stock = new Stock();
    final Payers payers = new Payers();
    private final String currency;
    private List<Layer> layers;

    Pool(String currency, List<Layer> layers) {
        this.currency = currency;
        this.layers = new ArrayList<>(layers);
    }

    void load(List<Layer> all) {
        layers = new ArrayList<>(all);
    }

    List<Layer> layers() {
        return List.copyOf(layers);
    }

    /** What all layers are worth, in minor units. */
    long minor() {
        return layers.stream().mapToLong(Layer::minor).sum();
    }

    private long quantity() {
        return layers.stream().mapToLong(Layer::quantity).sum();
    }

    /** The cost of pieces that are used up, in minor units. */
    long issue(long pieces, CostMethod method) {
        long there = quantity();
        long worth = minor();
        if (there == 0) {
            return 0;
        }
        if (pieces >= there) {
            layers = new ArrayList<>();
            return worth;
        }
        return switch (method) {
            case MOVING_AVERAGE -> {
                long cost = Share.of(worth, pieces, there);
                layers = new ArrayList<>(List.of(new Layer("", there - pieces, worth - cost)));
                yield cost;
            }
            case OLDEST_FIRST -> {
                drawOldest(pieces);
                yield worth - minor();
            }
        };
    }

    private void drawOldest(long pieces) {
        List<FifoLayers.Layer> known = new ArrayList<>();
        for (int number = 0; number < layers.size(); number++) {
            Layer layer = layers.get(number);
            known.add(new FifoLayers.Layer(
                    Integer.toString(number), layer.quantity(), Money.of(layer.minor(), currency), 0));
        }
        List<Layer> left = new ArrayList<>();
        new FifoLayers(known).draw(pieces).left().layers().forEach(after -> {
            if (after.left() > 0) {
                Layer before = layers.get(Integer.parseInt(after.id()));
                left.add(new Layer(
                        before.batch(), after.left(), after.valueLeft().minor()));
            }
        });
        layers = left;
    }

    /**
     * Pieces come in with their cost.
     *
     * @param deficit pieces that were used before any were there, 0 or more; they take none of the value
     */
    void put(String batch, long pieces, long minor, long deficit) {
        layers.add(new Layer(batch, Math.max(0, pieces - deficit), minor));
        tidy();
    }

    /** Pieces leave without any value of their own, such as back to the supplier; their own batch gives them first. */
    void drop(String batch, long pieces) {
        long open = pieces;
        for (int number : ownFirst(batch)) {
            Layer layer = layers.get(number);
            long taken = Math.min(open, layer.quantity());
            layers.set(number, new Layer(layer.batch(), layer.quantity() - taken, layer.minor()));
            open -= taken;
        }
        tidy();
    }

    /** Value comes to the layer of a batch, or to the oldest if nothing of the batch is left. */
    void raise(String batch, long minor) {
        List<Integer> order = ownFirst(batch);
        if (order.isEmpty()) {
            layers.add(new Layer(batch, 0, minor));
        } else {
            int number = layers.get(order.getFirst()).batch().equals(batch) ? order.getFirst() : 0;
            Layer layer = layers.get(number);
            layers.set(number, new Layer(layer.batch(), layer.quantity(), layer.minor() + minor));
        }
    }

    /**
     * Value leaves, from the layer of a batch first.
     *
     * @return the part that the pool does not have
     */
    long lower(String batch, long minor) {
        long open = minor;
        for (int number : ownFirst(batch)) {
            Layer layer = layers.get(number);
            long taken = Math.min(open, layer.minor());
            layers.set(number, new Layer(layer.batch(), layer.quantity(), layer.minor() - taken));
            open -= taken;
        }
        tidy();
        return open;
    }

    /** Numbers of the layers: the batch's own, then the newest to the oldest. */
    private List<Integer> ownFirst(String batch) {
        List<Integer> order = new ArrayList<>();
        for (int number = layers.size() - 1; number >= 0; number--) {
            order.add(layers.get(number).batch().equals(batch) ? 0 : order.size(), number);
        }
        return order;
    }

    /** Value without pieces joins the oldest layer that has some, or waits for pieces. */
    private void tidy() {
        long waiting = layers.stream()
                .filter(layer -> layer.quantity() == 0)
                .mapToLong(Layer::minor)
                .sum();
        layers.removeIf(layer -> layer.quantity() == 0);
        if (waiting != 0 && layers.isEmpty()) {
            layers.add(new Layer("", 0, waiting));
        } else if (waiting != 0) {
            Layer oldest = layers.getFirst();
            layers.set(0, new Layer(oldest.batch(), oldest.quantity(), oldest.minor() + waiting));
        }
    }

    /** What pieces that come back are worth: what their account paid for each on average, else the pool's average. */
    long worthOfReturned(String account, long pieces) {
        Payers.Paid paid = payers.of(account);
        if (paid.quantity() > 0) {
            return Share.of(paid.minor(), Math.min(pieces, paid.quantity()), paid.quantity());
        }
        return quantity() == 0 ? 0 : Share.of(minor(), pieces, quantity());
    }
}

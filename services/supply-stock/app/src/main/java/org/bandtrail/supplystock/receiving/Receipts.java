package org.bandtrail.supplystock.receiving;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.purchases.Received;
import org.bandtrail.supplystock.reels.ReelCommand;

/** What reels, batches and the order are told of a delivered line; pure. */
final class Receipts {
    private Receipts() {}

    /** The command by which a reel or batch is received at its cost. */
    static Object receive(DeliveredLine line, DeliveredHolding each, PersonId by, Occurred occurred) {
        return each.holding().equals("reel")
                ? new ReelCommand.Receive(
                        new ReelId(each.id()),
                        line.material(),
                        line.kind(),
                        Length.ofMm(each.quantity()),
                        each.cost(),
                        each.into(),
                        by,
                        occurred)
                : new BatchCommand.Receive(
                        new BatchId(each.id()),
                        line.material(),
                        line.kind(),
                        Pieces.of(each.quantity()),
                        each.cost(),
                        each.into(),
                        by,
                        occurred);
    }

    /** What the order is told: each of its lines once, however many lines of the delivery fulfil it. */
    static List<Received> received(List<DeliveredLine> lines) {
        Map<Integer, Received> received = new LinkedHashMap<>();
        for (DeliveredLine line : lines) {
            Integer fulfils = line.purchaseLine();
            if (fulfils != null) {
                received.merge(
                        fulfils,
                        new Received(fulfils, line.units(), line.quantity()),
                        (one, other) ->
                                new Received(fulfils, one.units() + other.units(), one.quantity() + other.quantity()));
            }
        }
        return List.copyOf(received.values());
    }
}

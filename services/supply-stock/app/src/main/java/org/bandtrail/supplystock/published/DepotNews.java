package org.bandtrail.supplystock.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.contract.v1.DepotStockChanged;
import org.bandtrail.supplystock.contract.v1.HoldingLabelled;
import org.bandtrail.supplystock.contract.v1.HoldingReserved;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.deliveries.DeliveryEvent;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.holds.HeldId;
import org.bandtrail.supplystock.holds.HoldEvent;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;

/**
 * What the other services hear about the contents of depots. The changes are read from the moves every event carries,
 * not from the kind of event: a new way to move material is told without a line here.
 */
final class DepotNews {
    static final String REEL = "reel";
    static final String BATCH = "batch";

    private DepotNews() {}

    /**
     * What is told of a private event; nothing if no depot has more or less than before.
     *
     * @param sequence of the event within its aggregate
     */
    static List<Object> of(Object event, long sequence) {
        return switch (event) {
            case ReelEvent reel -> changed(REEL, reel.reelId().value(), receipt(reel), reel.entry());
            case BatchEvent batch -> changed(BATCH, batch.batchId().value(), receipt(batch), batch.entry());
            case DeliveryEvent.Recorded recorded -> labels(recorded);
            case HoldEvent hold -> List.of(reserved(hold, sequence));
            default -> List.of();
        };
    }

    private static List<Object> changed(
            String holding, String id, DepotStockChanged.@Nullable Receipt receipt, Entry entry) {
        List<DepotStockChanged.Change> changes = changes(entry.moves());
        return changes.isEmpty()
                ? List.of()
                : List.of(new DepotStockChanged(
                        holding,
                        id,
                        changes,
                        receipt,
                        entry.occurred().happened(),
                        entry.occurred().recorded(),
                        entry.by().value()));
    }

    private static List<DepotStockChanged.Change> changes(List<Move> moves) {
        Map<Place, Long> sums = new TreeMap<>();
        for (Move move : moves) {
            if (move.source().depotId() != null) {
                sums.merge(move.source(), -move.quantity(), Long::sum);
            }
            if (move.target().depotId() != null) {
                sums.merge(move.target(), move.quantity(), Long::sum);
            }
        }
        List<DepotStockChanged.Change> changes = new ArrayList<>();
        sums.forEach((place, change) -> {
            if (change != 0) {
                changes.add(new DepotStockChanged.Change(
                        Objects.requireNonNull(place.depotId()).value(),
                        place.bin(),
                        place.kind() == PlaceKind.SET_ASIDE,
                        change));
            }
        });
        return changes;
    }

    private static DepotStockChanged.@Nullable Receipt receipt(ReelEvent event) {
        return switch (event) {
            case ReelEvent.Received in ->
                receipt(in.material(), in.kind(), in.length().mm(), in.cost());
            case ReelEvent.MadeBySlitting in ->
                receipt(in.material(), in.kind(), in.length().mm(), in.cost());
            default -> null;
        };
    }

    private static DepotStockChanged.@Nullable Receipt receipt(BatchEvent event) {
        return event instanceof BatchEvent.Received in
                ? receipt(in.material(), in.kind(), in.pieces().count(), in.cost())
                : null;
    }

    private static DepotStockChanged.Receipt receipt(
            MaterialCode material, MaterialKind kind, long quantity, Money cost) {
        return new DepotStockChanged.Receipt(material.value(), kind.name(), quantity, cost.minor(), cost.currency());
    }

    private static List<Object> labels(DeliveryEvent.Recorded recorded) {
        List<Object> labels = new ArrayList<>();
        for (DeliveredLine line : recorded.lines()) {
            for (DeliveredHolding each : line.holdings()) {
                labels.add(new HoldingLabelled(
                        each.holding(),
                        each.id(),
                        line.material().value(),
                        each.lot(),
                        each.expiresOn(),
                        recorded.occurred().happened(),
                        recorded.occurred().recorded(),
                        recorded.by().value()));
            }
        }
        return labels;
    }

    private static HoldingReserved reserved(HoldEvent event, long sequence) {
        HeldId held = event.held();
        String holding = held.whole() ? REEL : BATCH;
        return switch (event) {
            case HoldEvent.Placed placed ->
                new HoldingReserved(
                        holding,
                        held.id(),
                        placed.kit().value(),
                        placed.quantity(),
                        placed.until(),
                        sequence,
                        placed.occurred().happened(),
                        placed.occurred().recorded(),
                        placed.by().value());
            case HoldEvent.Ended ended ->
                new HoldingReserved(
                        holding,
                        held.id(),
                        ended.kit().value(),
                        0,
                        null,
                        sequence,
                        ended.occurred().happened(),
                        ended.occurred().recorded(),
                        ended.by().value());
        };
    }
}

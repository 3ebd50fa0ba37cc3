package org.bandtrail.supplystock.receiving;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchBalance;
import org.bandtrail.supplystock.batches.BatchBalances;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.deliveries.Deliveries;
import org.bandtrail.supplystock.deliveries.Delivery;
import org.bandtrail.supplystock.deliveries.DeliveryCommand;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.bandtrail.supplystock.deliveries.DeliveryRefused;
import org.bandtrail.supplystock.deliveries.DeliveryRow;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.purchases.PurchaseCommand;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.purchases.Received;
import org.bandtrail.supplystock.recalls.Recalls;
import org.bandtrail.supplystock.reels.ReelBalance;
import org.bandtrail.supplystock.reels.ReelBalances;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** What is done with a delivery later: accepted into stock, or sent back to the supplier. Call it inside a work. */
@Component
class AfterDelivery {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private final Commands commands;
    private final Deliveries deliveries;
    private final ReelBalances reels;
    private final BatchBalances batches;
    private final Recalls recalls;
    private final ObjectProvider<Projectors> projectors;

    AfterDelivery(
            Commands commands,
            Deliveries deliveries,
            ReelBalances reels,
            BatchBalances batches,
            Recalls recalls,
            ObjectProvider<Projectors> projectors) {
        this.commands = commands;
        this.deliveries = deliveries;
        this.reels = reels;
        this.batches = batches;
        this.recalls = recalls;
        this.projectors = projectors;
    }

    void accept(DeliveryId delivery, List<String> keys, @Nullable String bin, PersonId by, Occurred occurred) {
        DepotId depot = new DepotId(whole(delivery).delivery().depotId());
        Place into = bin == null || bin.isBlank() ? Place.depot(depot) : Place.bin(depot, bin.strip());
        commands.send(new DeliveryCommand.Accept(delivery, keys, into, by, occurred));
        for (String key : keys) {
            recalls.refuseIfRecalled(key.substring(0, key.indexOf('/')), key.substring(key.indexOf('/') + 1));
            Place aside = Place.setAside(depot); // what a batch has elsewhere was released by hand before
            commands.send(relocate(key, StockMove.RELEASED, aside, into, delivery.value(), null, by, occurred));
        }
    }

    void sendBack(DeliveryId delivery, List<String> keys, String reason, PersonId by, Occurred occurred) {
        DeliveryRow.Whole whole = whole(delivery);
        DepotId depot = new DepotId(whole.delivery().depotId());
        List<Received> back = back(whole, keys);
        commands.send(new DeliveryCommand.SendBack(delivery, keys, reason, by, occurred));
        for (String key : keys) {
            Place source = where(delivery, key, depot);
            commands.send(
                    relocate(key, StockMove.SENT_BACK, source, Place.SUPPLIER, delivery.value(), reason, by, occurred));
        }
        String purchase = whole.delivery().purchaseId();
        if (purchase != null && !back.isEmpty()) {
            commands.send(
                    new PurchaseCommand.NoteSentBack(new PurchaseId(purchase), delivery.value(), back, by, occurred));
        }
    }

    /** Waits for what was done a moment ago; a work that lost a race comes here again and sees the winner's. */
    private DeliveryRow.Whole whole(DeliveryId delivery) {
        projectors.getObject().caughtUp(PATIENCE);
        return deliveries.one(delivery).orElseThrow(() -> new DeliveryRefused.DeliveryUnknown(delivery));
    }

    /** What is to come again of each order line, so that all reels of a box together make the box, and none twice. */
    static List<Received> back(DeliveryRow.Whole whole, List<String> keys) {
        Set<String> chosen = new HashSet<>(keys);
        List<Received> back = new ArrayList<>();
        for (DeliveryRow.Line line : whole.lines()) {
            Integer fulfils = line.purchaseLine();
            List<DeliveryRow.Piece> going = line.pieces().stream()
                    .filter(each -> chosen.contains(each.holding() + "/" + each.id()))
                    .toList();
            if (fulfils == null || going.isEmpty()) {
                continue;
            }
            long gone = line.pieces().stream()
                    .filter(each -> each.state().equals(Delivery.State.SENT_BACK.word()))
                    .count();
            int all = line.pieces().size();
            long units = line.units() * (gone + going.size()) / all - line.units() * gone / all;
            back.add(new Received(
                    fulfils,
                    units,
                    going.stream().mapToLong(DeliveryRow.Piece::quantity).sum()));
        }
        return back;
    }

    /** Where most of it is; what is nowhere in stock is taken as set aside, and the reel's own rules refuse. */
    private Place now(String key, DepotId depot) {
        String id = key.substring(key.indexOf('/') + 1);
        String place = key.startsWith("reel/")
                ? reels.one(id).map(ReelBalance::place).orElse(null)
                : batches.one(id).map(BatchBalance::place).orElse(null);
        return place == null ? Place.setAside(depot) : Place.parse(place);
    }

    private Place where(DeliveryId delivery, String key, DepotId depot) {
        Place now = now(key, depot);
        boolean here = now.kind() == PlaceKind.DEPOT || now.kind() == PlaceKind.SET_ASIDE;
        if (!here || !Objects.equals(now.depotId(), depot)) {
            throw new DeliveryRefused.NoLongerWhole(delivery, key, now.toString());
        }
        return now;
    }

    private static Object relocate(
            String key,
            StockMove what,
            Place source,
            Place target,
            String reference,
            @Nullable String reason,
            PersonId by,
            Occurred occurred) {
        String id = key.substring(key.indexOf('/') + 1);
        return key.startsWith("reel/")
                ? new ReelCommand.Relocate(new ReelId(id), what, source, target, null, reference, reason, by, occurred)
                : new BatchCommand.Relocate(
                        new BatchId(id), what, source, target, null, reference, reason, by, occurred);
    }
}

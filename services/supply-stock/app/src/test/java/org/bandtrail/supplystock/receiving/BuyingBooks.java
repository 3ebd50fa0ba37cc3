package org.bandtrail.supplystock.receiving;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.deliveries.Delivery;
import org.bandtrail.supplystock.deliveries.DeliveryCommand;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.bandtrail.supplystock.deliveries.DeliveryRow;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.purchases.OrderedLine;
import org.bandtrail.supplystock.purchases.Purchase;
import org.bandtrail.supplystock.purchases.PurchaseCommand;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.purchases.Received;
import org.bandtrail.supplystock.reels.Reel;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;
import org.bandtrail.supplystock.suppliers.SupplierId;

/** One order with its deliveries and reels, kept by the rules alone, as the service keeps them by events. */
final class BuyingBooks {
    static final PurchaseId ORDER = new PurchaseId("PO-1");
    private static final DepotId YARD = new DepotId("YARD");
    private static final PersonId WHO = new PersonId("P-1");
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-12T08:00:00Z"));
    static final List<OrderedLine> LINES = List.of(
            line(1, OrderUnit.REEL, "36 yd", 10, 3_847),
            line(2, OrderUnit.BOX, "4 x 20 m", 3, 9_999),
            line(3, OrderUnit.METRE, "", 500, 83));

    Purchase purchase = Purchase.UNKNOWN;
    final List<DeliveredLine> delivered = new ArrayList<>();
    final List<Delivery> deliveries = new ArrayList<>();
    final Map<String, Reel> reels = new LinkedHashMap<>();

    BuyingBooks() {
        tell(new PurchaseCommand.Place(
                ORDER, new SupplierId("HOLM"), YARD, "USD", LINES, LocalDate.of(2026, 5, 13), WHO, WHEN));
    }

    private static OrderedLine line(int number, OrderUnit unit, String content, long units, long price) {
        Packing packing = Packing.of(MaterialKind.TAPE, unit, content);
        return new OrderedLine(
                number, new MaterialCode("TAPE"), MaterialKind.TAPE, packing, units, price, null, null, null);
    }

    void deliver(OrderedLine ordered, long units, List<Length> lengths) {
        List<Arrived.Reel> arrived = lengths.stream()
                .map(each -> new Arrived.Reel(null, each, null, null, null, null, null))
                .toList();
        List<String> numbers = new ArrayList<>();
        lengths.forEach(each -> numbers.add("R-" + (reels.size() + numbers.size() + 1)));
        DeliveryId id = new DeliveryId("D-" + (deliveries.size() + 1));
        Arrived.Line line = new Arrived.Line(ordered.line(), null, units, null, null, arrived, List.of());
        DeliveredLine made = new Comparing(new Arrived(id, null, ORDER, YARD, "", null, false, List.of(line)), numbers)
                .line(1, line, ordered, "USD", ordered.material(), ordered.kind());
        Delivery delivery = Delivery.UNKNOWN;
        for (var event : delivery.decide(new DeliveryCommand.Receive(
                id, new SupplierId("HOLM"), ORDER, YARD, "", List.of(made), List.of(), WHO, WHEN))) {
            delivery = delivery.evolve(event);
        }
        deliveries.add(delivery);
        delivered.add(made);
        for (DeliveredHolding each : made.holdings()) {
            reels.put(each.id(), Reel.UNKNOWN);
            tell(
                    each.id(),
                    new ReelCommand.Receive(
                            new ReelId(each.id()),
                            made.material(),
                            made.kind(),
                            Length.ofMm(each.quantity()),
                            each.cost(),
                            each.into(),
                            WHO,
                            WHEN));
        }
        tell(new PurchaseCommand.NoteDelivery(
                ORDER, id.value(), List.of(new Received(ordered.line(), made.units(), made.quantity())), WHO, WHEN));
    }

    void sendBack(int which, List<String> keys) {
        DeliveryId id = new DeliveryId("D-" + (which + 1));
        List<Received> back = AfterDelivery.back(row(which, id), keys);
        Delivery now = deliveries.get(which);
        for (var event : now.decide(new DeliveryCommand.SendBack(id, keys, "not good enough", WHO, WHEN))) {
            now = now.evolve(event);
        }
        deliveries.set(which, now);
        for (String key : keys) {
            String reel = key.substring(key.indexOf('/') + 1);
            tell(
                    reel,
                    new ReelCommand.Relocate(
                            new ReelId(reel),
                            StockMove.SENT_BACK,
                            Place.setAside(YARD),
                            Place.SUPPLIER,
                            null,
                            id.value(),
                            "not good enough",
                            WHO,
                            WHEN));
        }
        tell(new PurchaseCommand.NoteSentBack(ORDER, id.value(), back, WHO, WHEN));
    }

    private DeliveryRow.Whole row(int which, DeliveryId id) {
        DeliveredLine line = delivered.get(which);
        List<DeliveryRow.Piece> pieces = line.holdings().stream()
                .map(each -> new DeliveryRow.Piece(
                        each.holding(),
                        each.id(),
                        each.quantity(),
                        null,
                        null,
                        null,
                        "SOUND",
                        state(which, each),
                        each.cost()))
                .toList();
        return new DeliveryRow.Whole(
                new DeliveryRow(
                        id.value(),
                        "HOLM",
                        "Holm",
                        ORDER.value(),
                        YARD.value(),
                        "",
                        WHEN.happened(),
                        "P-1",
                        0,
                        0,
                        0,
                        0),
                List.of(new DeliveryRow.Line(
                        id.value(),
                        1,
                        line.purchaseLine(),
                        "TAPE",
                        line.kind(),
                        line.units(),
                        line.quantity(),
                        line.cost(),
                        pieces)),
                List.of());
    }

    String state(int which, DeliveredHolding each) {
        Delivery.State state = deliveries.get(which).state().get(each.key());
        return state == null ? "" : state.word();
    }

    private void tell(PurchaseCommand command) {
        for (var event : purchase.decide(command)) {
            purchase = purchase.evolve(event);
        }
    }

    private void tell(String reel, ReelCommand command) {
        Reel now = reels.getOrDefault(reel, Reel.UNKNOWN);
        for (var event : now.decide(command)) {
            now = now.evolve(event);
        }
        reels.put(reel, now);
    }
}

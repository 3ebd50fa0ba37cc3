package org.bandtrail.supplystock.invoicematches;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.deliveries.Condition;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.deliveries.DeliveryCommand;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.purchases.OrderedLine;
import org.bandtrail.supplystock.purchases.PurchaseCommand;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;
import org.bandtrail.supplystock.suppliers.SupplierCommand;
import org.bandtrail.supplystock.suppliers.SupplierId;
import tools.jackson.databind.JsonNode;

/**
 * A supplier, an order of ten reels of 45.720 m at USD 48.50 each, and what came of it, all under one name so that
 * tests do not meet.
 */
final class BoughtGoods {
    static final long REEL = 45_720;
    private static final Occurred MAY = Occurred.at(Instant.parse("2026-05-04T12:00:00Z"));
    private static final PersonId WHO = new PersonId("P-DEPOT");
    private final String name;
    private final String seller;
    private final Work work;
    private final Commands commands;
    private final FinanceDesk desk;

    BoughtGoods(String name, Work work, Commands commands, Projectors projectors, String url, String key) {
        this(name, name, work, commands, new FinanceDesk(url, key, projectors));
        work.inOneTransaction(() -> {
            commands.send(new SupplierCommand.Register(supplier(), "Supplier of " + name, WHO, MAY));
            return name;
        });
        order();
    }

    private BoughtGoods(String name, String seller, Work work, Commands commands, FinanceDesk desk) {
        this.name = name;
        this.seller = seller;
        this.work = work;
        this.commands = commands;
        this.desk = desk;
    }

    /** A second order to the same supplier. */
    BoughtGoods andAnother(String other) {
        BoughtGoods more = new BoughtGoods(other, seller, work, commands, desk);
        more.order();
        return more;
    }

    private void order() {
        work.inOneTransaction(() -> {
            commands.send(new PurchaseCommand.Place(
                    purchase(),
                    supplier(),
                    new DepotId("NORTH"),
                    "USD",
                    List.of(new OrderedLine(
                            1,
                            material(),
                            MaterialKind.TAPE,
                            new Packing(OrderUnit.REEL, REEL * 1_000),
                            10,
                            48_50,
                            null,
                            null,
                            null)),
                    MAY.happened().atOffset(ZoneOffset.UTC).toLocalDate(),
                    WHO,
                    MAY));
            return name;
        });
        desk.caughtUp();
    }

    SupplierId supplier() {
        return new SupplierId("S-" + seller);
    }

    PurchaseId purchase() {
        return new PurchaseId("PO-" + name);
    }

    MaterialCode material() {
        return new MaterialCode("TAPE-" + name);
    }

    String reel(int number) {
        return "R-%s-%02d".formatted(name, number);
    }

    /** So many reels come in one delivery and are accepted, each at 48.50. */
    void come(String delivery, int first, int count) {
        work.inOneTransaction(() -> {
            Place depot = Place.depot(new DepotId("NORTH"));
            List<DeliveredHolding> reels = new ArrayList<>();
            for (int number = first; number < first + count; number++) {
                Money cost = Money.of(48_50, "USD");
                reels.add(new DeliveredHolding(
                        "reel", reel(number), REEL, 127L, "L-1", null, Condition.SOUND, cost, depot));
                commands.send(new ReelCommand.Receive(
                        new ReelId(reel(number)),
                        material(),
                        MaterialKind.TAPE,
                        Length.ofMm(REEL),
                        cost,
                        depot,
                        WHO,
                        MAY));
            }
            DeliveredLine line = new DeliveredLine(
                    1, 1, material(), MaterialKind.TAPE, count, Money.of(48_50L * count, "USD"), reels);
            commands.send(new DeliveryCommand.Receive(
                    new DeliveryId(delivery),
                    supplier(),
                    purchase(),
                    new DepotId("NORTH"),
                    "",
                    List.of(line),
                    List.of(),
                    WHO,
                    MAY));
            return name;
        });
        desk.caughtUp();
    }

    /** A quarter of this reel is on a tree of the site {@code SITE-name}. */
    void useAQuarter(int reel) {
        work.inOneTransaction(() -> {
            commands.send(new ReelCommand.RecordFact(
                    new ReelId(reel(reel)),
                    "fact of " + name,
                    Place.crew(WHO),
                    Place.tree(new TreeId("T-" + name)),
                    Length.ofMm(REEL / 4),
                    new SiteId("SITE-" + name),
                    WHO,
                    MAY));
            return name;
        });
        desk.caughtUp();
    }

    /** The HTTP a finance officer speaks. */
    FinanceDesk desk() {
        return desk;
    }

    /** Millimetres billed against the order so far. */
    long billed() {
        JsonNode rows = desk.get("/invoices/order-lines?supplier=" + supplier()).get("rows");
        return StreamSupport.stream(rows.spliterator(), false)
                .filter(row ->
                        row.get("purchaseId").asString().equals(purchase().value()))
                .mapToLong(row -> row.get("billed").asLong())
                .sum();
    }

    /** What a reel costs now, in cents. */
    long cost(int reel) {
        JsonNode balance = desk.get("/reels/" + reel(reel)).get("balance");
        return balance.get("cost").get("minor").asLong();
    }

    /** A preview of this CSV. */
    JsonNode preview(String csv) {
        return desk.preview(csv, name + ".csv", supplier().value());
    }

    /** Keeps this CSV as its preview shows it, each line with what it most probably bills; the invoice's identity. */
    String keep(String csv) {
        return desk.keep(csv, name + ".csv", supplier().value());
    }
}

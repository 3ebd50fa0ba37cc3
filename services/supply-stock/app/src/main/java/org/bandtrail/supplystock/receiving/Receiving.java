package org.bandtrail.supplystock.receiving;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.deliveries.DeliveryCommand;
import org.bandtrail.supplystock.deliveries.DeliveryRefused;
import org.bandtrail.supplystock.deliveries.Finding;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.purchases.OrderedLine;
import org.bandtrail.supplystock.purchases.PurchaseCommand;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.purchases.PurchaseRefused;
import org.bandtrail.supplystock.purchases.PurchaseRow;
import org.bandtrail.supplystock.purchases.Purchases;
import org.bandtrail.supplystock.purchases.Received;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.bandtrail.supplystock.suppliers.Suppliers;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Takes a delivery in: compares it with its order, then tells reels, batches, order and delivery, all or none. */
@Component
class Receiving {
    private final Commands commands;
    private final Items items;
    private final Suppliers suppliers;
    private final Purchases purchases;
    private final ReelNumbers numbers;
    private final Inspection inspection;

    /**
     * @param lengthPermille difference of length that is let pass, per mille; 5 is our choice, no source
     * @param widthMm difference of width that is let pass, mm; 2 is our choice, no source
     */
    Receiving(
            Commands commands,
            Items items,
            Suppliers suppliers,
            Purchases purchases,
            ReelNumbers numbers,
            @Value("${bandtrail.delivery.length-permille:5}") int lengthPermille,
            @Value("${bandtrail.delivery.width-mm:2}") long widthMm) {
        this.commands = commands;
        this.items = items;
        this.suppliers = suppliers;
        this.purchases = purchases;
        this.numbers = numbers;
        this.inspection = new Inspection(lengthPermille, widthMm);
    }

    /** What was recorded. */
    record Taken(List<DeliveredLine> lines, List<Finding> findings) {}

    /** Takes it in; call it inside a work. */
    Taken take(Arrived arrived, PersonId by, Occurred occurred) {
        PurchaseRow.@Nullable Whole order = order(arrived);
        SupplierId supplier = supplier(arrived, order);
        Comparing comparing = new Comparing(arrived, numbers.next(supplier, Comparing.unnamed(arrived)));
        LocalDate day = occurred.happened().atOffset(ZoneOffset.UTC).toLocalDate();
        List<DeliveredLine> lines = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Arrived.Line each : arrived.lines()) {
            PurchaseRow.@Nullable Line awaited = awaited(order, each);
            OrderedLine ordered = awaited == null ? null : awaited.asOrdered();
            MaterialCode material = material(arrived, lines.size() + 1, each, ordered);
            DeliveredLine line = comparing.line(
                    lines.size() + 1,
                    each,
                    ordered,
                    order == null ? null : order.purchase().total().currency(),
                    material,
                    items.kindOf(material));
            lines.add(line);
            findings.addAll(inspection.of(line, expected(awaited, each, material), day));
        }
        tell(arrived, supplier, order, lines, findings, by, occurred);
        return new Taken(lines, findings);
    }

    private PurchaseRow.@Nullable Whole order(Arrived arrived) {
        PurchaseId purchase = arrived.purchaseId();
        return purchase == null
                ? null
                : purchases.one(purchase).orElseThrow(() -> new PurchaseRefused.PurchaseUnknown(purchase));
    }

    private SupplierId supplier(Arrived arrived, PurchaseRow.@Nullable Whole order) {
        SupplierId given = arrived.supplierId();
        if (order == null) {
            if (given == null) {
                throw new DeliveryRefused.SupplierMissing(arrived.deliveryId());
            }
            suppliers.needKnown(given);
            return given;
        }
        String ordered = order.purchase().supplierId();
        if (given != null && !given.value().equals(ordered)) {
            throw new DeliveryRefused.AnotherSupplier(arrived.deliveryId(), given.value(), ordered);
        }
        return new SupplierId(ordered);
    }

    private static PurchaseRow.@Nullable Line awaited(PurchaseRow.@Nullable Whole order, Arrived.Line line) {
        Integer number = line.purchaseLine();
        if (order == null || number == null) {
            return null;
        }
        Optional<PurchaseRow.Line> awaited =
                order.lines().stream().filter(each -> each.line() == number).findFirst();
        return awaited.orElseThrow(() ->
                new PurchaseRefused.LineUnknown(new PurchaseId(order.purchase().purchaseId()), number));
    }

    private static MaterialCode material(
            Arrived arrived, int number, Arrived.Line line, @Nullable OrderedLine ordered) {
        if (line.materialCode() != null) {
            return line.materialCode();
        }
        if (ordered == null) {
            throw new DeliveryRefused.ItemMissing(arrived.deliveryId(), number);
        }
        return ordered.material();
    }

    private Inspection.Expected expected(PurchaseRow.@Nullable Line awaited, Arrived.Line line, MaterialCode material) {
        Long width = items.one(material).map(ItemRow::widthMm).orElse(null);
        return awaited == null
                ? new Inspection.Expected(null, 0, 0, line.statedUnits(), width)
                : new Inspection.Expected(
                        awaited.asOrdered(),
                        awaited.remaining() == 0 ? 0 : Math.max(0, awaited.units() - awaited.receivedUnits()),
                        awaited.remaining(),
                        line.statedUnits(),
                        width);
    }

    private void tell(
            Arrived arrived,
            SupplierId supplier,
            PurchaseRow.@Nullable Whole order,
            List<DeliveredLine> lines,
            List<Finding> findings,
            PersonId by,
            Occurred occurred) {
        commands.send(new DeliveryCommand.Receive(
                arrived.deliveryId(),
                supplier,
                arrived.purchaseId(),
                arrived.depotId(),
                arrived.deliveryNote() == null ? "" : arrived.deliveryNote().strip(),
                lines,
                findings,
                by,
                occurred));
        for (DeliveredLine line : lines) {
            line.holdings().forEach(each -> commands.send(Receipts.receive(line, each, by, occurred)));
        }
        List<Received> received = Receipts.received(lines);
        if (order != null && arrived.purchaseId() != null && !received.isEmpty()) {
            commands.send(new PurchaseCommand.NoteDelivery(
                    arrived.purchaseId(), arrived.deliveryId().value(), received, by, occurred));
        }
    }
}

package org.bandtrail.supplystock.invoicematches;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.billings.BilledLine;
import org.bandtrail.supplystock.billings.BilledLines;
import org.bandtrail.supplystock.billings.BilledSoFar;
import org.bandtrail.supplystock.billings.Billing;
import org.bandtrail.supplystock.billings.BillingCommand;
import org.bandtrail.supplystock.billings.BillingEvent;
import org.bandtrail.supplystock.billings.OrderLineFigures;
import org.bandtrail.supplystock.billings.ToBill;
import org.bandtrail.supplystock.invoices.InvoiceCommand;
import org.bandtrail.supplystock.invoices.InvoiceEvent;
import org.bandtrail.supplystock.invoices.InvoiceEvent.ApprovedLine;
import org.bandtrail.supplystock.invoices.InvoiceId;
import org.bandtrail.supplystock.invoices.LineLink;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.tolerances.TolerancePolicies;
import org.bandtrail.supplystock.tolerances.Tolerances;
import org.springframework.stereotype.Component;

/** Approves an invoice: its lines are billed against their orders and differences carried to the goods, in one work. */
@Component
class Approvals {
    private final Commands commands;
    private final BilledLines billed;
    private final TolerancePolicies policies;
    private final CarriedDifferences carried;

    Approvals(Commands commands, BilledLines billed, TolerancePolicies policies, CarriedDifferences carried) {
        this.commands = commands;
        this.billed = billed;
        this.policies = policies;
        this.carried = carried;
    }

    /**
     * What an approval did.
     *
     * @param secondPersonNeeded whether another person has to approve before anything is paid
     * @param carried how the differences went to reels and batches
     */
    record Outcome(
            InvoiceId invoiceId, Money toPay, boolean secondPersonNeeded, List<CarriedDifferences.Carried> carried) {}

    /** Approves what waits; call it inside a work. */
    Outcome approve(InvoiceId invoice, PersonId by, Occurred occurred) {
        Tolerances tolerances = policies.now();
        Object answer =
                commands.ask(new InvoiceCommand.Approve(invoice, tolerances.secondPersonFromMinor(), by, occurred));
        if (answer instanceof List<?> events && !events.isEmpty()) {
            if (events.getLast() instanceof InvoiceEvent.ApprovedOnce once) {
                bills(invoice, once.lines(), tolerances, by, occurred).forEach(this::tried);
                return new Outcome(invoice, once.toPay(), true, List.of());
            }
            if (events.getLast() instanceof InvoiceEvent.Approved approved) {
                List<CarriedDifferences.Carried> differences = new ArrayList<>();
                for (BillingCommand.Bill bill : bills(invoice, approved.lines(), tolerances, by, occurred)) {
                    differences.addAll(bill(bill));
                }
                return new Outcome(invoice, approved.toPay(), false, differences);
            }
        }
        throw new IllegalStateException("Invoice %s was neither approved nor refused.".formatted(invoice));
    }

    private List<BillingCommand.Bill> bills(
            InvoiceId invoice, List<ApprovedLine> lines, Tolerances tolerances, PersonId by, Occurred occurred) {
        Map<String, List<ToBill>> byPurchase = new TreeMap<>();
        for (ApprovedLine line : lines) {
            LineLink link = line.link();
            if (link != null) {
                byPurchase
                        .computeIfAbsent(link.purchase().value(), unused -> new ArrayList<>())
                        .add(new ToBill(
                                line.line(), link.purchaseLine(), link.quantity(), line.net(), line.acceptedBecause()));
            }
        }
        return byPurchase.entrySet().stream()
                .map(entry -> {
                    PurchaseId purchase = new PurchaseId(entry.getKey());
                    return new BillingCommand.Bill(
                            purchase,
                            invoice.value(),
                            orders(purchase, entry.getValue()),
                            entry.getValue(),
                            tolerances,
                            by,
                            occurred);
                })
                .toList();
    }

    private List<OrderLineFigures> orders(PurchaseId purchase, List<ToBill> lines) {
        return lines.stream()
                .map(ToBill::purchaseLine)
                .distinct()
                .flatMap(line -> billed.order(purchase, line).stream())
                .toList();
    }

    /** The first of two persons should not approve what the second could not. */
    private void tried(BillingCommand.Bill bill) {
        Map<Integer, BilledSoFar> soFar = new HashMap<>();
        bill.lines()
                .forEach(line -> soFar.put(line.purchaseLine(), billed.before(bill.purchase(), line.purchaseLine())));
        new Billing(soFar).decide(bill);
    }

    private List<CarriedDifferences.Carried> bill(BillingCommand.Bill bill) {
        List<CarriedDifferences.Carried> differences = new ArrayList<>();
        if (commands.ask(bill) instanceof List<?> events) {
            for (Object event : events) {
                if (event instanceof BillingEvent.Billed done) {
                    for (BilledLine line : done.lines()) {
                        differences.addAll(carried.carry(done, line));
                    }
                }
            }
        }
        return differences;
    }
}

package org.bandtrail.supplystock.billings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.Money;

/**
 * The rules of what is billed against one purchase.
 *
 * @param lines what was billed so far, by line of the purchase
 */
public record Billing(Map<Integer, BilledSoFar> lines) {
    /** Nothing was billed yet. */
    public static final Billing NOTHING = new Billing(Map.of());

    /** Keeps the sums as they are given. */
    public Billing {
        lines = Map.copyOf(lines);
    }

    /**
     * What a command makes happen.
     *
     * @throws BillingRefused if a line does not match and nobody accepted it
     */
    public List<BillingEvent> decide(BillingCommand command) {
        return switch (command) {
            case BillingCommand.Bill bill -> bill(bill);
        };
    }

    private List<BillingEvent> bill(BillingCommand.Bill wish) {
        Map<Integer, BilledSoFar> soFar = new HashMap<>(lines);
        List<BilledLine> billed = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (ToBill each : wish.lines()) {
            OrderLineFigures order = wish.order(each.purchaseLine());
            BilledSoFar before = soFar.getOrDefault(each.purchaseLine(), BilledSoFar.NOTHING);
            Matching.LineMatch match = Matching.of(order, before, each, wish.tolerances());
            boolean accepted = match.verdict().acceptable() && each.acceptedBecause() != null;
            if (order == null || match.verdict() != Verdict.MATCHES && !accepted) {
                wrong.add(match.sentence());
            } else {
                long atReceipt = Matching.atReceiptMinor(order, before, each.quantity());
                BilledLine line = new BilledLine(
                        each.invoiceLine(),
                        each.purchaseLine(),
                        each.quantity(),
                        each.net(),
                        Money.of(atReceipt, each.net().currency()),
                        match.verdict(),
                        each.acceptedBecause());
                billed.add(line);
                soFar.put(each.purchaseLine(), before.and(line));
            }
        }
        if (!wrong.isEmpty()) {
            throw new BillingRefused.DoesNotMatch(wish.purchase(), wrong);
        }
        return billed.isEmpty()
                ? List.of()
                : List.of(new BillingEvent.Billed(wish.purchase(), wish.invoice(), billed, wish.by(), wish.occurred()));
    }

    /** What is billed after an event. */
    public Billing evolve(BillingEvent event) {
        return switch (event) {
            case BillingEvent.Billed billed -> {
                Map<Integer, BilledSoFar> next = new HashMap<>(lines);
                for (BilledLine line : billed.lines()) {
                    next.put(
                            line.purchaseLine(),
                            next.getOrDefault(line.purchaseLine(), BilledSoFar.NOTHING)
                                    .and(line));
                }
                yield new Billing(next);
            }
        };
    }
}

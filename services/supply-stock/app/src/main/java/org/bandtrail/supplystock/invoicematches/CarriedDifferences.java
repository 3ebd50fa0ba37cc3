package org.bandtrail.supplystock.invoicematches;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.billings.BilledLine;
import org.bandtrail.supplystock.billings.BillingEvent;
import org.bandtrail.supplystock.costs.LargestRemainder;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.slittings.CostChanges;
import org.springframework.stereotype.Component;

/**
 * Carries what an invoice costs more or less than the receipts to the reels and batches of its delivery lines, split by
 * their quantities by largest remainder. Each of them passes on to sites and waste what of it is used already and keeps
 * the rest in stock (specific identification, IAS 2.23-24), so nothing of the difference stays out of sight.
 */
@Component
class CarriedDifferences {
    private final CostChanges costs;
    private final OrderLines orderLines;

    CarriedDifferences(CostChanges costs, OrderLines orderLines) {
        this.costs = costs;
        this.orderLines = orderLines;
    }

    /**
     * A share of a difference.
     *
     * @param holding reel or batch
     */
    record Carried(String holding, String id, Money amount) {}

    /** Carries the difference of one billed line; call it inside a work. */
    List<Carried> carry(BillingEvent.Billed billed, BilledLine line) {
        Money difference = line.difference();
        if (difference.minor() == 0) {
            return List.of();
        }
        List<OrderLines.Holding> holdings =
                orderLines.holdings(billed.purchase().value(), line.purchaseLine());
        if (holdings.isEmpty()) {
            throw new MatchRefused.NothingToCarryTo(billed.purchase(), line.purchaseLine(), difference);
        }
        List<Long> shares = LargestRemainder.split(
                difference.minor(),
                holdings.stream().map(OrderLines.Holding::quantity).toList());
        CostChange why = line.net().minor() < 0 ? CostChange.CREDIT : CostChange.INVOICE_DIFFERENCE;
        String reference = "invoice %s line %s".formatted(billed.invoice(), line.invoiceLine());
        List<Carried> carried = new ArrayList<>();
        for (int index = 0; index < shares.size(); index++) {
            OrderLines.Holding holding = holdings.get(index);
            Money share = Money.of(shares.get(index), difference.currency());
            if (share.minor() != 0) {
                if (holding.reel()) {
                    costs.reel(new ReelId(holding.id()), why, share, reference, billed.by(), billed.occurred());
                } else {
                    costs.batch(new BatchId(holding.id()), why, share, reference, billed.by(), billed.occurred());
                }
                carried.add(new Carried(holding.reel() ? "reel" : "batch", holding.id(), share));
            }
        }
        return carried;
    }
}

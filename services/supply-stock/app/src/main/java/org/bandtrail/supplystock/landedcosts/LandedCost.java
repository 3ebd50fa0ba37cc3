package org.bandtrail.supplystock.landedcosts;

import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoices.InvoiceId;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a landed cost.
 *
 * @param spread what was spread, empty before
 * @param amount what the shares add up to, null before
 * @param invoice whose charge it is, or null
 * @param takenBack whether it was taken back
 */
public record LandedCost(
        List<LandedShare> spread,
        @Nullable Money amount,
        @Nullable InvoiceId invoice,
        boolean takenBack) {
    /** Nothing was spread under this identity. */
    public static final LandedCost UNKNOWN = new LandedCost(List.of(), null, null, false);

    /**
     * What a command makes happen.
     *
     * @throws LandedCostRefused if the wish cannot be granted
     */
    public List<LandedCostEvent> decide(LandedCostCommand command) {
        return switch (command) {
            case LandedCostCommand.Spread wish -> spread(wish);
            case LandedCostCommand.TakeBack wish -> takeBack(wish);
        };
    }

    private List<LandedCostEvent> spread(LandedCostCommand.Spread wish) {
        if (!spread.isEmpty()) {
            throw new LandedCostRefused.SpreadBefore(wish.landedCostId());
        }
        if (wish.amount().minor() <= 0) {
            throw new LandedCostRefused.NothingToSpread(wish.landedCostId(), wish.amount());
        }
        for (DeliveredLine line : wish.lines()) {
            if (!line.cost().currency().equals(wish.amount().currency())) {
                throw new LandedCostRefused.OtherCurrency(line.deliveryId(), line.cost(), wish.amount());
            }
        }
        if (wish.lines().stream().allMatch(line -> line.weight(wish.basis()) == 0)) {
            throw new LandedCostRefused.NothingWeighs(wish.basis());
        }
        return List.of(new LandedCostEvent.Spread(
                wish.landedCostId(),
                wish.what(),
                wish.amount(),
                wish.basis(),
                LandedSplit.shares(wish.amount(), wish.basis(), wish.lines()),
                wish.invoice(),
                wish.reference().strip(),
                wish.by(),
                wish.occurred()));
    }

    private List<LandedCostEvent> takeBack(LandedCostCommand.TakeBack wish) {
        if (amount == null || takenBack) {
            throw new LandedCostRefused.NothingToTakeBack(wish.landedCostId());
        }
        if (wish.reason().isBlank()) {
            throw new LandedCostRefused.ReasonMissing(wish.landedCostId());
        }
        return List.of(new LandedCostEvent.TakenBack(
                wish.landedCostId(), spread, amount, invoice, wish.reason().strip(), wish.by(), wish.occurred()));
    }

    /** The landed cost after an event. */
    public LandedCost evolve(LandedCostEvent event) {
        return switch (event) {
            case LandedCostEvent.Spread done -> new LandedCost(done.shares(), done.amount(), done.invoice(), false);
            case LandedCostEvent.TakenBack unused -> new LandedCost(spread, amount, invoice, true);
        };
    }
}

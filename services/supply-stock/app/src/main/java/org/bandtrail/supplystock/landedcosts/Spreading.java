package org.bandtrail.supplystock.landedcosts;

import java.util.List;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.invoices.InvoiceCommand;
import org.bandtrail.supplystock.slittings.CostChanges;
import org.springframework.stereotype.Component;

/** Spreads an amount and changes the cost of every reel and batch that bears a share; call it inside a work. */
@Component
class Spreading {
    private final Commands commands;
    private final CostChanges costs;

    Spreading(Commands commands, CostChanges costs) {
        this.commands = commands;
        this.costs = costs;
    }

    List<LandedShare> spread(LandedCostCommand.Spread wish) {
        List<LandedShare> shares = List.of();
        if (commands.ask(wish) instanceof List<?> events) {
            for (Object event : events) {
                if (event instanceof LandedCostEvent.Spread done) {
                    shares = done.shares();
                    CostChange why = done.what() == LandedKind.FREIGHT ? CostChange.FREIGHT : CostChange.DUTY;
                    change(done.landedCostId(), shares, 1, why, done.by(), done.occurred());
                }
            }
        }
        if (wish.invoice() != null) {
            commands.send(new InvoiceCommand.SpreadCharge(
                    wish.invoice(), wish.landedCostId().value(), wish.amount(), wish.by(), wish.occurred()));
        }
        return shares;
    }

    /** Takes every share off again; the charge of an invoice can then be spread anew. */
    void takeBack(LandedCostCommand.TakeBack wish) {
        if (commands.ask(wish) instanceof List<?> events) {
            for (Object event : events) {
                if (event instanceof LandedCostEvent.TakenBack back) {
                    change(back.landedCostId(), back.shares(), -1, CostChange.CORRECTION, back.by(), back.occurred());
                    if (back.invoice() != null) {
                        commands.send(new InvoiceCommand.SpreadCharge(
                                back.invoice(),
                                back.landedCostId().value(),
                                Money.of(-back.amount().minor(), back.amount().currency()),
                                back.by(),
                                back.occurred()));
                    }
                }
            }
        }
    }

    private void change(
            LandedCostId id, List<LandedShare> shares, int sign, CostChange why, PersonId by, Occurred occurred) {
        for (LandedShare share : shares) {
            Money delta = Money.of(sign * share.amount().minor(), share.amount().currency());
            String reference = "landed cost " + id;
            if (share.reel()) {
                costs.reel(new ReelId(share.id()), why, delta, reference, by, occurred);
            } else {
                costs.batch(new BatchId(share.id()), why, delta, reference, by, occurred);
            }
        }
    }
}

package org.bandtrail.supplystock.slittings;

import java.util.List;
import java.util.Objects;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.springframework.stereotype.Component;

/**
 * Changes the cost of reels and batches after their receipt; call it inside a work. What a wide reel has passed on to its
 * strips follows it there, strip by strip and by width, so that no cent stays between a wide reel and its strips.
 */
@Component
public class CostChanges {
    private static final String SLIT = Charge.slit("");
    private final Commands commands;
    private final Slittings slittings;

    CostChanges(Commands commands, Slittings slittings) {
        this.commands = commands;
        this.slittings = slittings;
    }

    /**
     * Changes the cost of a reel and of what was slit from it.
     *
     * @param reference what explains it, such as an invoice
     * @throws org.bandtrail.supplystock.holdings.StockRefused if stock would cost less than nothing
     */
    public void reel(ReelId reel, CostChange why, Money delta, String reference, PersonId by, Occurred occurred) {
        Object answer = commands.ask(new ReelCommand.ChangeCost(reel, why, delta, reference, by, occurred));
        for (Object event : (List<?>) Objects.requireNonNull(answer)) {
            for (Charge charge : ((ReelEvent) event).entry().charges()) {
                if (charge.account().startsWith(SLIT) && charge.minor() != 0) {
                    passOn(
                            charge.account().substring(SLIT.length()),
                            Money.of(charge.minor(), delta.currency()),
                            by,
                            occurred);
                }
            }
        }
    }

    private void passOn(String slitting, Money delta, PersonId by, Occurred occurred) {
        List<Strip> strips = slittings.strips(slitting);
        List<Long> shares = Slitting.costs(delta.minor(), strips);
        for (int i = 0; i < strips.size(); i++) {
            if (shares.get(i) != 0) {
                Money share = Money.of(shares.get(i), delta.currency());
                reel(strips.get(i).reelId(), CostChange.FROM_WIDE_REEL, share, slitting, by, occurred);
            }
        }
    }

    /**
     * Changes the cost of a batch.
     *
     * @param reference what explains it, such as an invoice
     * @throws org.bandtrail.supplystock.holdings.StockRefused if stock would cost less than nothing
     */
    public void batch(BatchId batch, CostChange why, Money delta, String reference, PersonId by, Occurred occurred) {
        commands.send(new BatchCommand.ChangeCost(batch, why, delta, reference, by, occurred));
    }
}

package org.bandtrail.supplystock.landedcosts;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.invoices.InvoiceId;
import org.jspecify.annotations.Nullable;

/** What people ask of a landed cost. */
public sealed interface LandedCostCommand {

    /**
     * Wish: spread an amount over lines of deliveries. Refused if nothing would bear it.
     *
     * @param invoice whose charge it is, or null if it was entered by hand
     * @param reference the carrier's paper or other words, may be empty
     */
    record Spread(
            @TargetAggregateIdentifier LandedCostId landedCostId,
            LandedKind what,
            Money amount,
            Basis basis,
            List<DeliveredLine> lines,
            @Nullable InvoiceId invoice,
            String reference,
            PersonId by,
            Occurred occurred)
            implements LandedCostCommand {}

    /** Wish: take a spreading back. Refused without a reason. */
    record TakeBack(@TargetAggregateIdentifier LandedCostId landedCostId, String reason, PersonId by, Occurred occurred)
            implements LandedCostCommand {}
}

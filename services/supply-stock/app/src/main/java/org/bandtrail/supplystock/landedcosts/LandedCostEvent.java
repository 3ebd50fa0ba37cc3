package org.bandtrail.supplystock.landedcosts;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.invoices.InvoiceId;
import org.jspecify.annotations.Nullable;

/** What happened to a landed cost. */
public sealed interface LandedCostEvent {
    /** The landed cost it happened to. */
    LandedCostId landedCostId();

    /** Spread over goods; the shares add up to the amount. */
    @StoredAs("landed-cost.spread")
    @Revision("1")
    record Spread(
            LandedCostId landedCostId,
            LandedKind what,
            Money amount,
            Basis basis,
            List<LandedShare> shares,
            @Nullable InvoiceId invoice,
            String reference,
            PersonId by,
            Occurred occurred)
            implements LandedCostEvent {}

    /**
     * Taken back: every share was taken off again.
     *
     * @param amount what the shares add up to
     * @param invoice whose charge it is, or null
     */
    @StoredAs("landed-cost.taken-back")
    @Revision("1")
    record TakenBack(
            LandedCostId landedCostId,
            List<LandedShare> shares,
            Money amount,
            @Nullable InvoiceId invoice,
            String reason,
            PersonId by,
            Occurred occurred)
            implements LandedCostEvent {}
}

package org.bandtrail.supplystock.suppliers;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a supplier's entry. */
public sealed interface SupplierCommand {

    /** Wish: register a supplier. Refused if the identity is taken or the name empty. */
    record Register(@TargetAggregateIdentifier SupplierId supplierId, String name, PersonId by, Occurred occurred)
            implements SupplierCommand {}

    /** Wish: note what the supplier quoted. Refused if the supplier is unknown or the quote contradicts itself. */
    record NoteQuote(@TargetAggregateIdentifier SupplierId supplierId, Quote quote, PersonId by, Occurred occurred)
            implements SupplierCommand {}

    /** Wish: order no more by this quote. Refused if there is no such quote or no reason. */
    record WithdrawQuote(
            @TargetAggregateIdentifier SupplierId supplierId, int quote, String reason, PersonId by, Occurred occurred)
            implements SupplierCommand {}
}

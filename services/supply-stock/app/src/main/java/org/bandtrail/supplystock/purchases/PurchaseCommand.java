package org.bandtrail.supplystock.purchases;

import java.time.LocalDate;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.suppliers.SupplierId;

/** What people ask of an order, in the order of its life. */
public sealed interface PurchaseCommand {

    /** Wish: order. Refused if the identity is taken, no line is in it or a line has no quantity. */
    record Place(
            @TargetAggregateIdentifier PurchaseId purchaseId,
            SupplierId supplier,
            DepotId depot,
            String currency,
            List<OrderedLine> lines,
            LocalDate expectedOn,
            PersonId by,
            Occurred occurred)
            implements PurchaseCommand {}

    /** Fact: something of it was delivered. Counts in every state; an order nobody placed is refused by its number. */
    record NoteDelivery(
            @TargetAggregateIdentifier PurchaseId purchaseId,
            String delivery,
            List<Received> lines,
            PersonId by,
            Occurred occurred)
            implements PurchaseCommand {}

    /** Fact: something delivered went back to the supplier, so it is to come again. */
    record NoteSentBack(
            @TargetAggregateIdentifier PurchaseId purchaseId,
            String delivery,
            List<Received> lines,
            PersonId by,
            Occurred occurred)
            implements PurchaseCommand {}

    /** Wish: expect it on another day. Refused without a reason or when nothing is to come. */
    record Expect(
            @TargetAggregateIdentifier PurchaseId purchaseId,
            LocalDate expectedOn,
            String reason,
            PersonId by,
            Occurred occurred)
            implements PurchaseCommand {}

    /** Wish: wait no longer for what has not come. Refused without a reason, or if it ended before. */
    record Close(@TargetAggregateIdentifier PurchaseId purchaseId, String reason, PersonId by, Occurred occurred)
            implements PurchaseCommand {}

    /** Wish: call the order off. Refused without a reason, or if something has come: then close it. */
    record Cancel(@TargetAggregateIdentifier PurchaseId purchaseId, String reason, PersonId by, Occurred occurred)
            implements PurchaseCommand {}
}

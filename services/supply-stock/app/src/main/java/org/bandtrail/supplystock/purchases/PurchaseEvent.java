package org.bandtrail.supplystock.purchases;

import java.time.LocalDate;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.suppliers.SupplierId;

/** What happened to an order. */
public sealed interface PurchaseEvent {
    /** The order it happened to. */
    PurchaseId purchaseId();

    /** Ordered, each line with its price as worked out from the quote that day. */
    @StoredAs("purchase.ordered")
    @Revision("1")
    record Ordered(
            PurchaseId purchaseId,
            SupplierId supplier,
            DepotId depot,
            String currency,
            List<OrderedLine> lines,
            LocalDate expectedOn,
            PersonId by,
            Occurred occurred)
            implements PurchaseEvent {}

    /** Something of it was delivered. */
    @StoredAs("purchase.delivered")
    @Revision("1")
    record Delivered(PurchaseId purchaseId, String delivery, List<Received> lines, PersonId by, Occurred occurred)
            implements PurchaseEvent {}

    /** Something delivered went back to the supplier. */
    @StoredAs("purchase.sent-back")
    @Revision("1")
    record SentBack(PurchaseId purchaseId, String delivery, List<Received> lines, PersonId by, Occurred occurred)
            implements PurchaseEvent {}

    /** Expected on another day. */
    @StoredAs("purchase.expected")
    @Revision("1")
    record Expected(PurchaseId purchaseId, LocalDate expectedOn, String reason, PersonId by, Occurred occurred)
            implements PurchaseEvent {}

    /** Nobody waits any longer for what has not come. */
    @StoredAs("purchase.closed")
    @Revision("1")
    record Closed(PurchaseId purchaseId, String reason, PersonId by, Occurred occurred) implements PurchaseEvent {}

    /** Called off before anything came. */
    @StoredAs("purchase.cancelled")
    @Revision("1")
    record Cancelled(PurchaseId purchaseId, String reason, PersonId by, Occurred occurred) implements PurchaseEvent {}
}

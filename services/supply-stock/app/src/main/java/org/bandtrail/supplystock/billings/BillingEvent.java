package org.bandtrail.supplystock.billings;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.purchases.PurchaseId;

/** What happened to the billings of a purchase. */
public sealed interface BillingEvent {
    /** The purchase it happened to. */
    PurchaseId purchase();

    /** Lines of an approved invoice were billed against it. */
    @StoredAs("billing.billed")
    @Revision("1")
    record Billed(PurchaseId purchase, String invoice, List<BilledLine> lines, PersonId by, Occurred occurred)
            implements BillingEvent {}
}

package org.bandtrail.supplystock.deliveries;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/** What happened to a delivery. */
public sealed interface DeliveryEvent {
    /** The delivery it happened to. */
    DeliveryId deliveryId();

    /** Arrived, counted and measured. The moves stand with the reels and batches. */
    @StoredAs("delivery.recorded")
    @Revision("1")
    record Recorded(
            DeliveryId deliveryId,
            SupplierId supplier,
            @Nullable PurchaseId purchase,
            DepotId depot,
            String deliveryNote,
            List<DeliveredLine> lines,
            List<Finding> findings,
            PersonId by,
            Occurred occurred)
            implements DeliveryEvent {}

    /** Some of what was set aside was accepted. */
    @StoredAs("delivery.accepted")
    @Revision("1")
    record Accepted(DeliveryId deliveryId, List<String> keys, Place into, PersonId by, Occurred occurred)
            implements DeliveryEvent {}

    /** Released without asking the delivery, on the page of what is set aside; nothing of it waits any more. */
    @StoredAs("delivery.released")
    @Revision("1")
    record Released(DeliveryId deliveryId, String key, Place into, PersonId by, Occurred occurred)
            implements DeliveryEvent {}

    /** Some of it went back to the supplier. */
    @StoredAs("delivery.sent-back")
    @Revision("1")
    record SentBack(DeliveryId deliveryId, List<String> keys, String reason, PersonId by, Occurred occurred)
            implements DeliveryEvent {}
}

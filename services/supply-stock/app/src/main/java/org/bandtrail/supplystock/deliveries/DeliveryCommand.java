package org.bandtrail.supplystock.deliveries;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/** What people ask of a delivery. */
public sealed interface DeliveryCommand {

    /**
     * Wish: record what arrived. Refused if the number is taken, nothing is in it, or an identity occurs twice.
     *
     * @param purchase order it fulfils, null if it came without one
     * @param deliveryNote number on the supplier's paper, may be empty
     */
    record Receive(
            @TargetAggregateIdentifier DeliveryId deliveryId,
            SupplierId supplier,
            @Nullable PurchaseId purchase,
            DepotId depot,
            String deliveryNote,
            List<DeliveredLine> lines,
            List<Finding> findings,
            PersonId by,
            Occurred occurred)
            implements DeliveryCommand {}

    /**
     * Wish: accept what was set aside. Refused if one of it is not set aside with this delivery.
     *
     * @param keys of the reels and batches, see {@link DeliveredHolding#key}
     * @param into depot or bin they go to
     */
    record Accept(
            @TargetAggregateIdentifier DeliveryId deliveryId,
            List<String> keys,
            Place into,
            PersonId by,
            Occurred occurred)
            implements DeliveryCommand {}

    /**
     * Fact of the same work: it was released for use on the page of what is set aside, where no delivery is asked. What
     * this delivery does not have set aside is none of its business and changes nothing.
     *
     * @param key of the reel or batch
     * @param into depot or bin it went to
     * @param whole whether nothing of it is set aside any more; part of a batch may still be
     */
    record NoteReleased(
            @TargetAggregateIdentifier DeliveryId deliveryId,
            String key,
            Place into,
            boolean whole,
            PersonId by,
            Occurred occurred)
            implements DeliveryCommand {}

    /** Wish: send some back to the supplier. Refused without a reason, or if one went back before. */
    record SendBack(
            @TargetAggregateIdentifier DeliveryId deliveryId,
            List<String> keys,
            String reason,
            PersonId by,
            Occurred occurred)
            implements DeliveryCommand {}
}

package org.bandtrail.supplystock.receiving;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.deliveries.Condition;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/**
 * What somebody at the counter counted and measured, before it is compared with the order.
 *
 * @param supplierId who brought it; may be left out with an order
 * @param purchaseId order it fulfils, or null
 * @param bin of the depot for what is accepted at once, or null
 * @param accept whether what is not damaged goes into stock at once; otherwise it is set aside
 */
record Arrived(
        DeliveryId deliveryId,
        @Nullable SupplierId supplierId,
        @Nullable PurchaseId purchaseId,
        DepotId depotId,
        @Nullable String deliveryNote,
        @Nullable String bin,
        boolean accept,
        List<Line> lines) {

    /**
     * Goods of one item.
     *
     * @param purchaseLine line of the order, null if not ordered
     * @param materialCode what arrived; may be left out if it is what was ordered
     * @param units order units counted; left out, each reel or batch is one
     * @param statedUnits order units on the supplier's paper, null if nobody looked
     * @param cost of the line where no order says it
     */
    record Line(
            @Nullable Integer purchaseLine,
            @Nullable MaterialCode materialCode,
            @Nullable Long units,
            @Nullable Long statedUnits,
            @Nullable Money cost,
            List<Reel> reels,
            List<Batch> batches) {}

    /**
     * One reel.
     *
     * @param reelId left out, the next number of the supplier is given
     * @param accept overrides the delivery's choice; null leaves it
     */
    record Reel(
            @Nullable ReelId reelId,
            Length length,
            @Nullable Length width,
            @Nullable String lot,
            @Nullable LocalDate expiresOn,
            @Nullable Condition condition,
            @Nullable Boolean accept) {}

    /** One batch of fasteners; see {@link Reel}. */
    record Batch(
            @Nullable BatchId batchId,
            Pieces pieces,
            @Nullable String lot,
            @Nullable LocalDate expiresOn,
            @Nullable Condition condition,
            @Nullable Boolean accept) {}
}

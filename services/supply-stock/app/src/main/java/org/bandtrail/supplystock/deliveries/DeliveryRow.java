package org.bandtrail.supplystock.deliveries;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One delivery as people see it.
 *
 * @param purchaseId order it fulfils, null if it came without one
 * @param deliveryNote number on the supplier's paper, may be empty
 * @param reels how many reels
 * @param batches how many batches
 * @param setAside how many of both wait to be accepted
 * @param findings how many things were not as they should be
 */
public record DeliveryRow(
        String deliveryId,
        String supplierId,
        String supplierName,
        @Nullable String purchaseId,
        String depotId,
        String deliveryNote,
        Instant deliveredAt,
        String personId,
        long reels,
        long batches,
        long setAside,
        long findings) {

    /** A delivery with everything in it. */
    public record Whole(DeliveryRow delivery, List<Line> lines, List<Finding> findings) {}

    /**
     * Goods of one item.
     *
     * @param purchaseLine line of the order it fulfils, null if none
     * @param units order units counted, 0 where the order's unit is a length or there is no order
     * @param quantity millimetres measured or pieces counted
     * @param cost by the order's price or as given on arrival; what an invoice changes later stands with the reels
     */
    public record Line(
            String deliveryId,
            int line,
            @Nullable Integer purchaseLine,
            String materialCode,
            MaterialKind kind,
            long units,
            long quantity,
            Money cost,
            List<Piece> pieces) {}

    /**
     * One reel or batch.
     *
     * @param holding {@code reel} or {@code batch}
     * @param quantity millimetres or pieces on arrival
     * @param state set aside, accepted or sent back
     * @param cost on arrival
     */
    public record Piece(
            String holding,
            String id,
            long quantity,
            @Nullable Long widthMm,
            @Nullable String lot,
            @Nullable LocalDate expiresOn,
            String condition,
            String state,
            Money cost) {}
}

package org.bandtrail.supplystock.deliveries;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A delivered reel or batch with what its label says.
 *
 * @param holding {@code reel} or {@code batch}
 * @param quantity millimetres or pieces on arrival
 * @param widthMm as measured on arrival, null for fasteners or if nobody measured
 * @param lot the maker's lot in upper case, null if none was stated
 * @param expiresOn last day the adhesive is good for, null if none was stated
 * @param state {@code set aside}, {@code accepted} or {@code sent back}
 * @param deliveredOn UTC day
 */
public record LotRow(
        String holding,
        String id,
        String materialCode,
        String kind,
        long quantity,
        @Nullable Long widthMm,
        @Nullable String lot,
        @Nullable LocalDate expiresOn,
        String condition,
        String state,
        String supplierId,
        @Nullable String purchaseId,
        String deliveryId,
        LocalDate deliveredOn) {}

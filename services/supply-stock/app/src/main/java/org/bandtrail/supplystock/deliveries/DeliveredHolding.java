package org.bandtrail.supplystock.deliveries;

import java.time.LocalDate;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * One reel or batch as it arrived.
 *
 * @param holding {@code reel} or {@code batch}
 * @param id its identity in the books and on its label
 * @param quantity millimetres measured or pieces counted, above zero
 * @param widthMm width as measured, null for fasteners or if nobody measured
 * @param lot the maker's lot in upper case, null if none is stated
 * @param expiresOn last day the adhesive is good for, null if none is stated
 * @param cost its part of the line's cost
 * @param into set aside, or a depot or bin if it was accepted at once
 */
public record DeliveredHolding(
        String holding,
        String id,
        long quantity,
        @Nullable Long widthMm,
        @Nullable String lot,
        @Nullable LocalDate expiresOn,
        Condition condition,
        Money cost,
        Place into) {

    /** A reel and a batch may bear the same identity; this tells them apart: {@code reel/R-0001}. */
    public String key() {
        return holding + "/" + id;
    }
}

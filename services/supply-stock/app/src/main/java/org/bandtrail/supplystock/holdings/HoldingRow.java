package org.bandtrail.supplystock.holdings;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The balance of one reel or batch as people see it. Quantities are millimetres for reels and pieces for batches.
 *
 * @param place where most of what is in stock lies, or null if nothing is
 * @param costMinor cost of the receipt in minor units of the currency
 */
public record HoldingRow(
        String id,
        @Nullable String material,
        @Nullable String kind,
        long bought,
        long received,
        long inDepot,
        long withCrew,
        long onTree,
        long inBag,
        long disposed,
        long writtenOff,
        long missing,
        long setAside,
        long inVehicle,
        long inTransit,
        long slit,
        long costMinor,
        long chargedMinor,
        long writtenOffMinor,
        long writtenDownMinor,
        long slitMinor,
        @Nullable String currency,
        @Nullable String place,
        @Nullable String lastHolder,
        @Nullable Instant receivedAt,
        Instant lastMovedAt) {}

package org.bandtrail.supplystock.reels;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.holdings.HoldingReads.HistoryLine;
import org.bandtrail.supplystock.holdings.HoldingReads.PlaceBalance;
import org.bandtrail.supplystock.holdings.HoldingRow;
import org.jspecify.annotations.Nullable;

/**
 * One reel as people see it: how much of it is where, in millimetres, and what it cost.
 *
 * @param materialCode null while only the field has heard of the reel
 * @param receivedMm on the receipt, and found later
 * @param slitMm cut lengthwise into narrower reels; negative if it was made from a wider one
 * @param place where most of what is in stock lies, text form of a place, or null
 * @param cost actual cost of the receipt, null until received
 * @param charged part of the cost that sites have paid so far, null until received
 */
public record ReelBalance(
        String reelId,
        @Nullable String materialCode,
        @Nullable String kind,
        long receivedMm,
        long inDepotMm,
        long withCrewMm,
        long onTreeMm,
        long inBagMm,
        long disposedMm,
        long writtenOffMm,
        long missingMm,
        long setAsideMm,
        long inVehicleMm,
        long inTransitMm,
        long slitMm,
        @Nullable String place,
        @Nullable Money cost,
        @Nullable Money charged,
        @Nullable String lastHolder,
        @Nullable Instant receivedAt,
        Instant lastMovedAt) {

    static ReelBalance of(HoldingRow row) {
        String currency = row.currency();
        return new ReelBalance(
                row.id(),
                row.material(),
                row.kind(),
                row.received(),
                row.inDepot(),
                row.withCrew(),
                row.onTree(),
                row.inBag(),
                row.disposed(),
                row.writtenOff(),
                row.missing(),
                row.setAside(),
                row.inVehicle(),
                row.inTransit(),
                row.slit(),
                row.place(),
                currency == null ? null : Money.of(row.costMinor(), currency),
                currency == null ? null : Money.of(row.chargedMinor(), currency),
                row.lastHolder(),
                row.receivedAt(),
                row.lastMovedAt());
    }

    /**
     * A reel with all its places and its history.
     *
     * @param places every place with a balance, in millimetres
     * @param history oldest first
     */
    public record Whole(ReelBalance balance, List<PlaceBalance> places, List<HistoryLine> history) {}
}

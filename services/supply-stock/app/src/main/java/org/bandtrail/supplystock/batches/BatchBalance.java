package org.bandtrail.supplystock.batches;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.holdings.HoldingReads.HistoryLine;
import org.bandtrail.supplystock.holdings.HoldingReads.PlaceBalance;
import org.bandtrail.supplystock.holdings.HoldingRow;
import org.jspecify.annotations.Nullable;

/**
 * One batch as people see it: how much of it is where, in pieces, and what it cost.
 *
 * @param materialCode null while only the field has heard of the batch
 * @param receivedPieces on the receipt, and found later
 * @param slitPieces cut lengthwise into narrower reels; negative if it was made from a wider one
 * @param place where most of what is in stock lies, text form of a place, or null
 * @param cost actual cost of the receipt, null until received
 * @param charged part of the cost that sites have paid so far, null until received
 */
public record BatchBalance(
        String batchId,
        @Nullable String materialCode,
        @Nullable String kind,
        long receivedPieces,
        long inDepotPieces,
        long withCrewPieces,
        long onTreePieces,
        long inBagPieces,
        long disposedPieces,
        long writtenOffPieces,
        long missingPieces,
        long setAsidePieces,
        long inVehiclePieces,
        long inTransitPieces,
        long slitPieces,
        @Nullable String place,
        @Nullable Money cost,
        @Nullable Money charged,
        @Nullable String lastHolder,
        @Nullable Instant receivedAt,
        Instant lastMovedAt) {

    static BatchBalance of(HoldingRow row) {
        String currency = row.currency();
        return new BatchBalance(
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
     * A batch with all its places and its history.
     *
     * @param places every place with a balance, in pieces
     * @param history oldest first
     */
    public record Whole(BatchBalance balance, List<PlaceBalance> places, List<HistoryLine> history) {}
}

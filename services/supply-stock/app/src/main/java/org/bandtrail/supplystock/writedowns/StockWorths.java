package org.bandtrail.supplystock.writedowns;

import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.HoldingReads;
import org.bandtrail.supplystock.holdings.HoldingRow;
import org.bandtrail.supplystock.holdings.StockRefused;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What single reels and batches stand at in the books, for somebody who is about to write one down. */
@Repository
public class StockWorths {
    private final HoldingReads reels;
    private final HoldingReads batches;

    StockWorths(JdbcClient jdbc) {
        this.reels = new HoldingReads(jdbc, "reel");
        this.batches = new HoldingReads(jdbc, "batch");
    }

    /**
     * What is left of one reel or batch.
     *
     * @param holding {@code reel} or {@code batch}
     * @param quantity mm or pieces that are still paid for as stock; what is missing and not written off counts
     * @param worth what that stands at, the most a write-down can take
     */
    public record Worth(String holding, String id, @Nullable String materialCode, long quantity, Money worth) {}

    /**
     * A reel.
     *
     * @throws StockRefused if it was never received, so that it has no cost
     */
    public Worth ofReel(ReelId reel) {
        return reels.one(reel.value())
                .map(row -> worth("reel", row))
                .orElseThrow(() -> new StockRefused.ReceiptUnknown("Reel [" + reel.value() + "]"));
    }

    /**
     * A batch of fasteners.
     *
     * @throws StockRefused if it was never received, so that it has no cost
     */
    public Worth ofBatch(BatchId batch) {
        return batches.one(batch.value())
                .map(row -> worth("batch", row))
                .orElseThrow(() -> new StockRefused.ReceiptUnknown("Batch [" + batch.value() + "]"));
    }

    private static Worth worth(String holding, HoldingRow row) {
        String currency = row.currency();
        if (currency == null) {
            throw new StockRefused.ReceiptUnknown((holding.equals("reel") ? "Reel [" : "Batch [") + row.id() + "]");
        }
        long left = row.inDepot() + row.setAside() + row.inVehicle() + row.inTransit() + row.withCrew() + row.missing();
        long charged = row.chargedMinor() + row.writtenOffMinor() + row.writtenDownMinor() + row.slitMinor();
        return new Worth(holding, row.id(), row.material(), left, Money.of(row.costMinor() - charged, currency));
    }
}

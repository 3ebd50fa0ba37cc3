package org.bandtrail.supplystock.batches;

import java.util.List;
import java.util.Optional;
import org.bandtrail.supplystock.holdings.HoldingReads;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The balances of all batches. */
@Repository
public class BatchBalances {
    private final HoldingReads reads;

    BatchBalances(JdbcClient jdbc) {
        this.reads = new HoldingReads(jdbc, "batch");
    }

    /** One page by batch identity; see {@link HoldingReads#page}. */
    public List<BatchBalance> page(
            @Nullable String material,
            @Nullable String place,
            @Nullable String text,
            @Nullable String after,
            int limit) {
        return reads.page(material, place, text, after, limit).stream()
                .map(BatchBalance::of)
                .toList();
    }

    /** The balance of one batch, empty if the books have never heard of it. */
    public Optional<BatchBalance> one(String batchId) {
        return reads.one(batchId).map(BatchBalance::of);
    }

    /** One batch with places and history, empty if the books have never heard of it. */
    public Optional<BatchBalance.Whole> whole(String batchId) {
        return one(batchId)
                .map(balance -> new BatchBalance.Whole(balance, reads.places(batchId), reads.history(batchId)));
    }
}

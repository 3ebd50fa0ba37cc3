package org.bandtrail.supplystock.reels;

import java.util.List;
import java.util.Optional;
import org.bandtrail.supplystock.holdings.HoldingReads;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The balances of all reels. */
@Repository
public class ReelBalances {
    private final HoldingReads reads;

    ReelBalances(JdbcClient jdbc) {
        this.reads = new HoldingReads(jdbc, "reel");
    }

    /** One page by reel identity; see {@link HoldingReads#page}. */
    public List<ReelBalance> page(
            @Nullable String material,
            @Nullable String place,
            @Nullable String text,
            @Nullable String after,
            int limit) {
        return reads.page(material, place, text, after, limit).stream()
                .map(ReelBalance::of)
                .toList();
    }

    /** The balance of one reel, empty if the books have never heard of it. */
    public Optional<ReelBalance> one(String reelId) {
        return reads.one(reelId).map(ReelBalance::of);
    }

    /** One reel with places and history, empty if the books have never heard of it. */
    public Optional<ReelBalance.Whole> whole(String reelId) {
        return one(reelId).map(balance -> new ReelBalance.Whole(balance, reads.places(reelId), reads.history(reelId)));
    }
}

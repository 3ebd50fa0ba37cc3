package org.bandtrail.frontdesk.neighbours.money;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says was spent. mm, pieces, minor units of money. */
public final class Spending {
    private Spending() {}

    /** One page of rows with the total of the same months and the identity that proves no cent leaked. */
    public record Page(
            List<Row> rows,
            @Nullable String next,
            @Nullable Row total,
            @Nullable Identity identity,
            List<NotReceived> notReceived) {}

    /** Used at a site before its receipt is in the books: it has no price yet. mm of a reel, pieces of a batch. */
    public record NotReceived(
            String holding, String id, @Nullable String siteId, long quantity) {}

    /** One site, tree, item, crew, person, grant or month; only the names of the way of adding up are there. */
    public record Row(
            @Nullable String siteId,
            @Nullable String treeId,
            @Nullable String materialCode,
            @Nullable String crewId,
            @Nullable String personId,
            @Nullable String grantId,
            @Nullable String month,
            String currency,
            long tapeMinor,
            long meshMinor,
            long fastenerMinor,
            long totalMinor,
            long usedMinor,
            long scrappedMinor,
            long missingMinor,
            long writtenDownMinor,
            @Nullable Long tapeMm,
            @Nullable Long meshMm,
            @Nullable Long pieces) {}

    /** Received = still in stock + charged to sites + written off + written down. */
    public record Identity(Money received, Money inStock, Money charged, Money writtenOff, Money writtenDown) {}

    /** One charge behind a figure; the month is the one it posts to. */
    public record Line(
            String holding,
            String id,
            String materialCode,
            String kind,
            String what,
            @Nullable String note,
            String account,
            @Nullable String treeId,
            @Nullable String personId,
            String currency,
            long quantity,
            long minor,
            Instant happenedAt,
            Instant recordedAt,
            String month) {
        /** Whether it posts to a later month than its own, because that was closed before it was heard. */
        public boolean late() {
            return !happenedAt.toString().startsWith(month);
        }
    }

    /** What a site cost beside the work done there; no site for all together, ratios in major units. */
    public record Work(
            @Nullable String siteId,
            String currency,
            long totalMinor,
            long trees,
            long bands,
            long bandDays,
            long insects,
            long lowerBounds,
            @Nullable BigDecimal perTree,
            @Nullable BigDecimal perBandDay,
            @Nullable BigDecimal perThousandInsects) {}
}

package org.bandtrail.supplystock.recalls;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.supplystock.deliveries.Lots;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.bandtrail.supplystock.traces.Traces;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Recalls as they stand, and whether a reel or batch is under one. */
@Repository
public class Recalls {
    private static final String SELECT = """
            SELECT r.*, coalesce(a.holdings, 0) AS holdings, coalesce(a.length, 0) AS length, coalesce(a.pieces, 0) AS pieces
            FROM recall r LEFT JOIN LATERAL (
                SELECT count(DISTINCT holding || '/' || id) AS holdings,
                       sum(quantity) FILTER (WHERE holding = 'reel') AS length,
                       sum(quantity) FILTER (WHERE holding = 'batch') AS pieces
                FROM recall_aside WHERE recall_id = r.recall_id) a ON true""";

    private final JdbcClient jdbc;
    private final Traces traces;

    Recalls(JdbcClient jdbc, Traces traces) {
        this.jdbc = jdbc;
        this.traces = traces;
    }

    /**
     * One page of recalls, the newest first.
     *
     * @param open only those that are not lifted
     * @param after identity of the last row before, or null for the first page
     */
    public List<RecallRow> page(boolean open, @Nullable String after, int limit) {
        String newer = after == null
                ? ""
                : " AND (r.started_at, r.recall_id) < (SELECT started_at, recall_id FROM recall WHERE recall_id = :after)";
        return jdbc.sql(SELECT + " WHERE (NOT :open OR r.lifted_at IS NULL)" + newer
                        + " ORDER BY r.started_at DESC, r.recall_id DESC LIMIT :limit")
                .param("open", open)
                .param("after", after)
                .param("limit", limit)
                .query(Recalls::row)
                .list();
    }

    /** One recall, empty if there is none of this identity. */
    public Optional<RecallRow> one(RecallId recall) {
        return jdbc.sql(SELECT + " WHERE r.recall_id = ?")
                .param(recall.value())
                .query(Recalls::row)
                .optional();
    }

    /** All recalls that are not lifted. */
    public List<RecallRow> open() {
        return jdbc.sql(SELECT + " WHERE r.lifted_at IS NULL ORDER BY r.recall_id")
                .query(Recalls::row)
                .list();
    }

    /** The open recall of a supplier's lot, in any case of letters. */
    public Optional<RecallRow> openOf(String lot, SupplierId supplier) {
        return jdbc.sql(SELECT + """
                         WHERE r.lifted_at IS NULL AND r.lot = ? AND (r.supplier_id IS NULL OR r.supplier_id = ?)
                        ORDER BY r.started_at LIMIT 1""")
                .params(Lots.spelt(lot), supplier.value())
                .query(Recalls::row)
                .optional();
    }

    /**
     * Refuses what is of a recalled lot; ask before handing out, loading, releasing or accepting.
     *
     * @param holding {@code reel} or {@code batch}
     * @throws RecallRefused.StillRecalled naming the recall
     */
    public void refuseIfRecalled(String holding, String id) {
        List<RecallRow> open = open();
        if (open.isEmpty()) {
            return;
        }
        List<Traces.SuppliersLot> lots = traces.lotsOf(holding, id);
        for (RecallRow recall : open) {
            if (lots.stream().anyMatch(recall::means)) {
                throw new RecallRefused.StillRecalled(holding, id, recall);
            }
        }
    }

    private static RecallRow row(ResultSet row, int number) throws SQLException {
        OffsetDateTime lifted = row.getObject("lifted_at", OffsetDateTime.class);
        return new RecallRow(
                row.getString("recall_id"),
                row.getString("lot"),
                row.getString("supplier_id"),
                row.getString("reason"),
                row.getString("by_person"),
                row.getObject("started_at", OffsetDateTime.class).toInstant(),
                row.getLong("holdings"),
                row.getLong("length"),
                row.getLong("pieces"),
                lifted == null ? null : lifted.toInstant(),
                row.getString("lifted_by"),
                row.getString("lift_reason"));
    }
}

package org.bandtrail.supplystock.spend;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.bandtrail.supplystock.spend.Spend.NotReceived;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the spend. Sums are done by the database over the rows of the projection, cost first, never rounded. */
@Repository
class SpendBooks {
    private static final String SUMS = """
            coalesce(sum(s.cost_minor) FILTER (WHERE h.kind = 'TAPE'), 0) AS tape_minor,
            coalesce(sum(s.cost_minor) FILTER (WHERE h.kind = 'MESH'), 0) AS mesh_minor,
            coalesce(sum(s.cost_minor) FILTER (WHERE h.kind = 'FASTENER'), 0) AS fastener_minor,
            coalesce(sum(s.cost_minor), 0) AS total_minor,
            coalesce(sum(s.quantity) FILTER (WHERE h.kind = 'TAPE'), 0) AS tape_mm,
            coalesce(sum(s.quantity) FILTER (WHERE h.kind = 'MESH'), 0) AS mesh_mm,
            coalesce(sum(s.quantity) FILTER (WHERE h.kind = 'FASTENER'), 0) AS pieces
            """;

    private final JdbcClient jdbc;

    SpendBooks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of rows.
     *
     * @param after key of the last row of the page before, empty for the first page
     */
    List<SpendRow> rows(SpendBy by, String after, int limit) {
        return jdbc.sql("""
                SELECT * FROM (
                    SELECT %s, %s
                    FROM spend s JOIN spend_holding h USING (holding, id)
                    WHERE s.account LIKE 'site:%%' AND h.currency IS NOT NULL
                    GROUP BY 1, 2, 3, 4) AS lines
                WHERE key > :after ORDER BY key LIMIT :limit""".formatted(by.columns(), SUMS))
                .param("after", after)
                .param("limit", limit)
                .query(SpendBooks::row)
                .list();
    }

    /** The total line of each currency; zeros if nothing was charged. */
    List<SpendRow> totals() {
        return jdbc.sql("""
                SELECT h.currency AS key, NULL AS site_id, NULL AS tree_id, NULL AS material, h.currency, %s
                FROM spend_holding h LEFT JOIN spend s
                    ON s.holding = h.holding AND s.id = h.id AND s.account LIKE 'site:%%'
                WHERE h.currency IS NOT NULL
                GROUP BY h.currency ORDER BY h.currency""".formatted(SUMS)).query(SpendBooks::row).list();
    }

    /** Received = in stock + charged + written off, of each currency, the one with the largest receipts first. */
    List<SpendIdentity> identities() {
        return jdbc.sql("""
                SELECT h.currency, sum(h.cost_minor - c.slit) AS received,
                    sum(CASE WHEN h.revalued OR h.bought = 0 THEN h.cost_minor - c.charged - c.written_off - c.slit
                        ELSE h.cost_minor - div(2::numeric * h.cost_minor * least(greatest(h.used, 0), h.bought)
                            + h.bought, 2 * h.bought) END) AS in_stock,
                    sum(c.charged) AS charged, sum(c.written_off) AS written_off
                FROM spend_holding h CROSS JOIN LATERAL (
                    SELECT coalesce(sum(s.cost_minor) FILTER (WHERE s.account LIKE 'site:%'), 0) AS charged,
                        coalesce(sum(s.cost_minor) FILTER (WHERE s.account LIKE 'written-%'), 0) AS written_off,
                        coalesce(sum(s.cost_minor) FILTER (WHERE s.account LIKE 'slit:%'), 0) AS slit
                    FROM spend s WHERE s.holding = h.holding AND s.id = h.id) AS c
                WHERE h.currency IS NOT NULL
                GROUP BY h.currency ORDER BY received DESC, h.currency""")
                .query((row, number) -> SpendIdentity.of(
                        row.getString("currency"),
                        row.getLong("received"),
                        row.getLong("in_stock"),
                        row.getLong("charged"),
                        row.getLong("written_off")))
                .list();
    }

    /** What the field used of reels and batches that were never received. */
    List<NotReceived> notReceived() {
        return jdbc.sql("""
                SELECT holding, id, substr(s.account, 6) AS site_id, sum(s.quantity) AS quantity
                FROM spend s JOIN spend_holding h USING (holding, id)
                WHERE h.currency IS NULL AND s.account LIKE 'site:%'
                GROUP BY 1, 2, 3 HAVING sum(s.quantity) <> 0 ORDER BY 1, 2, 3""").query(NotReceived.class).list();
    }

    private static SpendRow row(ResultSet row, int number) throws SQLException {
        return new SpendRow(
                row.getString("key"),
                row.getString("site_id"),
                row.getString("tree_id"),
                row.getString("material"),
                row.getString("currency"),
                row.getLong("tape_minor"),
                row.getLong("mesh_minor"),
                row.getLong("fastener_minor"),
                row.getLong("total_minor"),
                row.getLong("tape_mm"),
                row.getLong("mesh_mm"),
                row.getLong("pieces"));
    }
}

package org.bandtrail.supplystock.spend;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.YearMonth;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.spend.Spend.NotReceived;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the spend from what accounts paid, as the ledger sums it. Everything is added by the database, never rounded. */
@Repository
class SpendBooks {
    private static final String SUMS = """
            coalesce(sum(a.minor) FILTER (WHERE a.site_id <> '' AND a.kind = 'TAPE'), 0)::bigint AS tape_minor,
            coalesce(sum(a.minor) FILTER (WHERE a.site_id <> '' AND a.kind = 'MESH'), 0)::bigint AS mesh_minor,
            coalesce(sum(a.minor) FILTER (WHERE a.site_id <> '' AND a.kind = 'FASTENER'), 0)::bigint AS fastener_minor,
            coalesce(sum(a.minor) FILTER (WHERE a.site_id <> '' AND a.what = 'scrapped'), 0)::bigint AS scrapped_minor,
            coalesce(sum(a.minor) FILTER (WHERE a.account = 'written-off'), 0)::bigint AS missing_minor,
            coalesce(sum(a.minor) FILTER (WHERE a.account = 'written-down'), 0)::bigint AS written_down_minor,
            coalesce(sum(a.quantity) FILTER (WHERE a.site_id <> '' AND a.kind = 'TAPE'), 0)::bigint AS tape_mm,
            coalesce(sum(a.quantity) FILTER (WHERE a.site_id <> '' AND a.kind = 'MESH'), 0)::bigint AS mesh_mm,
            coalesce(sum(a.quantity) FILTER (WHERE a.site_id <> '' AND a.kind = 'FASTENER'), 0)::bigint AS pieces
            """;

    /** What was spent: not what only went from a wide reel to its strips, and not what has no price yet. */
    private static final String SPENT =
            "a.currency <> '' AND a.account NOT LIKE 'slit:%' AND a.period BETWEEN :from AND :through";

    private final JdbcClient jdbc;

    SpendBooks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of rows, for every way of adding up but by grant.
     *
     * @param after key of the last row of the page before, empty for the first page
     */
    List<SpendRow> rows(SpendBy by, Months months, String after, int limit) {
        String sitesOnly = by == SpendBy.SITE || by == SpendBy.TREE ? " AND a.site_id <> ''" : "";
        return jdbc.sql("""
                        SELECT * FROM (
                            SELECT %s, %s
                            FROM ledger_account a WHERE %s%s
                            GROUP BY name, name2, a.currency) AS lines
                        WHERE key > :after ORDER BY key LIMIT :limit""".formatted(by.naming(), SUMS, SPENT, sitesOnly))
                .param("from", months.from())
                .param("through", months.through())
                .param("after", after)
                .param("limit", limit)
                .query((row, number) ->
                        SpendRow.of(by, row.getString("key"), row.getString("name"), row.getString("name2"), sums(row)))
                .list();
    }

    /** The total line of each currency that was ever received in, by currency; zeros if nothing was spent. */
    List<SpendRow> totals(Months months) {
        return jdbc.sql("""
                        SELECT c.currency, %s
                        FROM (SELECT DISTINCT currency FROM ledger_trial WHERE currency <> '') c
                        LEFT JOIN ledger_account a ON a.currency = c.currency AND %s
                        GROUP BY c.currency ORDER BY c.currency""".formatted(SUMS, SPENT))
                .param("from", months.from())
                .param("through", months.through())
                .query((row, number) -> SpendRow.of(SpendBy.SITE, row.getString("currency"), null, null, sums(row)))
                .list();
    }

    /** What sites paid, in the smallest sums that grants share. */
    List<SpendCell> cells(Months months) {
        return jdbc.sql("""
                        SELECT a.site_id, a.period, a.material, a.kind, a.currency, a.what = 'scrapped' AS scrapped,
                               sum(a.quantity)::bigint AS quantity, sum(a.minor)::bigint AS minor
                        FROM ledger_account a
                        WHERE %s AND a.site_id <> ''
                        GROUP BY 1, 2, 3, 4, 5, 6 ORDER BY 1, 2, 3, 4, 5, 6""".formatted(SPENT))
                .param("from", months.from())
                .param("through", months.through())
                .query((row, number) -> new SpendCell(
                        row.getString("site_id"),
                        YearMonth.parse(row.getString("period")),
                        row.getString("material"),
                        MaterialKind.valueOf(row.getString("kind")),
                        row.getString("currency"),
                        row.getBoolean("scrapped"),
                        row.getLong("quantity"),
                        row.getLong("minor")))
                .list();
    }

    /** Received = in stock + charged + missing + written down, of each currency, the largest receipts first. */
    List<SpendIdentity> identities() {
        return jdbc.sql("""
                        WITH paid AS (
                            SELECT currency, sum(out_minor - in_minor - adjusted_minor) AS received
                            FROM ledger_trial WHERE place LIKE 'supplier:%' AND currency <> '' GROUP BY currency),
                        spent AS (
                            SELECT currency,
                                   coalesce(sum(minor) FILTER (WHERE site_id <> ''), 0) AS charged,
                                   coalesce(sum(minor) FILTER (WHERE account = 'written-off'), 0) AS written_off,
                                   coalesce(sum(minor) FILTER (WHERE account = 'written-down'), 0) AS written_down
                            FROM ledger_account WHERE currency <> '' GROUP BY currency),
                        there AS (
                            SELECT h.currency, sum(p.value_minor) AS in_stock
                            FROM ledger_place p
                            JOIN (SELECT holding, id, currency FROM ledger_holding
                                  UNION SELECT 'pool', material || ' ' || currency, currency FROM ledger_holding) h
                              ON h.holding = p.holding AND h.id = p.id
                            WHERE p.stock GROUP BY h.currency)
                        SELECT currency, received::bigint, coalesce(in_stock, 0)::bigint AS in_stock,
                               coalesce(charged, 0)::bigint AS charged, coalesce(written_off, 0)::bigint AS written_off,
                               coalesce(written_down, 0)::bigint AS written_down
                        FROM paid LEFT JOIN spent USING (currency) LEFT JOIN there USING (currency)
                        ORDER BY received DESC, currency""")
                .query((row, number) -> SpendIdentity.of(
                        row.getString("currency"),
                        row.getLong("received"),
                        row.getLong("in_stock"),
                        row.getLong("charged"),
                        row.getLong("written_off"),
                        row.getLong("written_down")))
                .list();
    }

    /** What the field used of reels and batches that were never received. */
    List<NotReceived> notReceived() {
        return jdbc.sql("""
                        SELECT holding, id, site_id, sum(account_quantity)::bigint AS quantity
                        FROM ledger_line WHERE currency = '' AND site_id <> ''
                        GROUP BY 1, 2, 3 HAVING sum(account_quantity) <> 0 ORDER BY 1, 2, 3""").query(NotReceived.class).list();
    }

    private static SpendRow.Sums sums(ResultSet row) throws SQLException {
        return new SpendRow.Sums(
                row.getString("currency"),
                row.getLong("tape_minor"),
                row.getLong("mesh_minor"),
                row.getLong("fastener_minor"),
                row.getLong("scrapped_minor"),
                row.getLong("missing_minor"),
                row.getLong("written_down_minor"),
                row.getLong("tape_mm"),
                row.getLong("mesh_mm"),
                row.getLong("pieces"));
    }
}

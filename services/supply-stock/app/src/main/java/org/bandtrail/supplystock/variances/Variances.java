package org.bandtrail.supplystock.variances;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.TreeMap;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.spend.Months;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads variances from billed lines and settled kits; the formula is in {@link Standard}. */
@Repository
class Variances {
    /** The usual cost of an item is for a new reel or a pack. */
    private static final String ITEM_CONTENT =
            "CASE i.kind WHEN 'FASTENER' THEN i.pack_size ELSE i.reel_length_mm * 1000 END";

    private static final String PRICES = """
            SELECT to_char(b.billed_at AT TIME ZONE 'UTC', 'YYYY-MM') AS month, l.material, l.kind, b.currency,
                   q.quote IS NOT NULL AS quoted, coalesce(q.content, %s) AS content,
                   coalesce(q.unit_price, i.unit_cost_minor) AS price,
                   sum(b.quantity) AS quantity, sum(b.net_minor) AS paid, count(*) AS lines
            FROM billed_line b
            JOIN purchase_line l ON l.purchase_id = b.purchase_id AND l.line = b.line
            JOIN purchase p ON p.purchase_id = b.purchase_id
            LEFT JOIN LATERAL (
                SELECT s.quote, s.content, r.unit_price
                FROM supplier_quote s JOIN supplier_price_break r USING (supplier_id, quote)
                WHERE s.supplier_id = p.supplier_id AND s.quote = l.quote AND s.currency = b.currency
                  AND r.from_units <= l.units
                ORDER BY r.from_units DESC LIMIT 1) q ON true
            LEFT JOIN item i ON i.material = l.material AND i.currency = b.currency
            WHERE to_char(b.billed_at AT TIME ZONE 'UTC', 'YYYY-MM') BETWEEN :from AND :through
            GROUP BY 1, 2, 3, 4, 5, 6, 7""".formatted(ITEM_CONTENT);

    private static final String USES = """
            WITH listed AS (
                SELECT k.kit_id, to_char(k.handed_out_at AT TIME ZONE 'UTC', 'YYYY-MM') AS month
                FROM kit_life k JOIN kit_settlement s ON s.kit_id = k.kit_id AND s.settled_at IS NOT NULL
                WHERE k.handed_out_at IS NOT NULL AND EXISTS (SELECT 1 FROM kit_pick p WHERE p.kit_id = k.kit_id)
                  AND to_char(k.handed_out_at AT TIME ZONE 'UTC', 'YYYY-MM') BETWEEN :from AND :through),
            figures AS (
                SELECT k.month, k.kit_id, p.material, p.kind, p.quantity AS planned, 0 AS used, 0 AS missing
                FROM listed k JOIN kit_pick p ON p.kit_id = k.kit_id
                UNION ALL
                SELECT k.month, k.kit_id, l.material, l.kind, 0, s.fitted + s.scrapped, s.missing
                FROM listed k JOIN kit_line l ON l.kit_id = k.kit_id
                JOIN kit_line_settled s ON s.kit_id = l.kit_id AND s.id = l.id
                     AND s.holding = CASE l.kind WHEN 'FASTENER' THEN 'batch' ELSE 'reel' END)
            SELECT f.month, f.material, f.kind, count(DISTINCT f.kit_id) AS kits, sum(f.planned) AS planned,
                   sum(f.used) AS used, sum(f.missing) AS missing, i.currency, i.unit_cost_minor AS price, %s AS content
            FROM figures f LEFT JOIN item i ON i.material = f.material
            GROUP BY f.month, f.material, f.kind, i.material ORDER BY f.month, f.material""".formatted(ITEM_CONTENT);

    private final JdbcClient jdbc;

    Variances(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Purchase price variances by month, item and currency. */
    List<PriceVariance> prices(Months months) {
        TreeMap<String, PriceVariance> sums = new TreeMap<>();
        jdbc.sql(PRICES)
                .param("from", months.from())
                .param("through", months.through())
                .query(Variances::price)
                .list()
                .forEach(row -> sums.merge(row.key(), row, PriceVariance::plus));
        return List.copyOf(sums.values());
    }

    /** Usage variances by month and item. */
    List<UsageVariance> uses(Months months) {
        return jdbc.sql(USES)
                .param("from", months.from())
                .param("through", months.through())
                .query(Variances::use)
                .list();
    }

    private static PriceVariance price(ResultSet row, int number) throws SQLException {
        Standard standard = standard(row);
        long quantity = row.getLong("quantity");
        long paid = row.getLong("paid");
        long lines = row.getLong("lines");
        return new PriceVariance(
                row.getString("month"),
                row.getString("material"),
                row.getString("kind"),
                row.getString("currency"),
                quantity,
                paid,
                standard == null ? null : Long.valueOf(standard.cost(quantity)),
                standard == null ? null : Long.valueOf(standard.priceVariance(paid, quantity)),
                row.getBoolean("quoted") ? lines : 0,
                lines);
    }

    private static UsageVariance use(ResultSet row, int number) throws SQLException {
        Standard standard = standard(row);
        long planned = row.getLong("planned");
        long used = row.getLong("used");
        return new UsageVariance(
                row.getString("month"),
                row.getString("material"),
                row.getString("kind"),
                row.getLong("kits"),
                planned,
                used,
                row.getLong("missing"),
                row.getString("currency"),
                standard == null ? null : Long.valueOf(standard.usageVariance(used, planned)));
    }

    private static @Nullable Standard standard(ResultSet row) throws SQLException {
        Long content = row.getObject("content", Long.class);
        Long price = row.getObject("price", Long.class);
        return content == null || price == null
                ? null
                : new Standard(MaterialKind.valueOf(row.getString("kind")), content, price);
    }
}

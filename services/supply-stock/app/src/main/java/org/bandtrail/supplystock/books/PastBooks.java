package org.bandtrail.supplystock.books;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Repository;

/**
 * Reads the books at a past moment. Whole days come from the sums by day; lines are read for the day on which the
 * moment lies, as it happened, and for the day on which it was known, as it was recorded. So the cost does not grow
 * with the number of moves, only with that of days and places.
 */
@Repository
public class PastBooks {
    private static final String STOCK = "slot ~ '^(set-aside|depot|in-transit|vehicle|crew|missing):'";
    /** Each line as what it adds to its source, its target and its account. */
    private static final String SIDES = """
        CROSS JOIN LATERAL (
            SELECT 'place' AS side, l.source AS slot, -l.quantity AS quantity, -l.out_minor AS minor
            WHERE l.source IS NOT NULL
            UNION ALL SELECT 'place', l.target, l.quantity, l.in_minor WHERE l.target IS NOT NULL
            UNION ALL SELECT 'account', l.account, l.account_quantity, l.account_minor WHERE l.account IS NOT NULL
        ) AS s\
        """;

    private static final String BOOKS = """
        WITH parts AS (
            SELECT side, slot, material, kind, currency, quantity, minor, recorded_day < :knownDay AS known,
                true AS now
            FROM ledger_day WHERE side = :side AND happened_day < :day
            UNION ALL
            SELECT s.side, s.slot, l.material, l.kind, l.currency, s.quantity, s.minor,
                l.recorded_at <= :knownAt, true
            FROM ledger_line l %1$s WHERE l.happened_at >= :dayStart AND l.happened_at <= :at AND s.side = :side
            UNION ALL
            SELECT s.side, s.slot, l.material, l.kind, l.currency, s.quantity, s.minor, true, false
            FROM ledger_line l %1$s
            WHERE l.recorded_at >= :knownStart AND l.recorded_at <= :knownAt AND l.happened_at < :dayStart
                AND s.side = :side),
        books AS (
            SELECT CASE WHEN slot ~ '^(tree|bag|disposed|slit):' THEN split_part(slot, ':', 1) || ':' ELSE slot END
                AS slot, material, kind, currency,
                CASE WHEN known THEN quantity ELSE 0 END AS quantity_then,
                CASE WHEN known THEN minor ELSE 0 END AS minor_then,
                CASE WHEN now THEN quantity ELSE 0 END AS quantity_now,
                CASE WHEN now THEN minor ELSE 0 END AS minor_now
            FROM parts)
        """.formatted(SIDES);

    private static final String SUMS = """
        coalesce(sum(quantity_then), 0) AS quantity_then, coalesce(sum(minor_then), 0) AS minor_then,
        coalesce(sum(quantity_now), 0) AS quantity_now, coalesce(sum(minor_now), 0) AS minor_now\
        """;

    private final JdbcClient jdbc;

    PastBooks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** One page by place, item or account; what is nothing then and now is left out. */
    List<AsOf.Row> rows(AsOfBy by, Instant at, Instant knownAt, String after, int limit) {
        return at(BOOKS + """
            SELECT * FROM (
                SELECT concat_ws('|', %1$s, material, currency) COLLATE "C" AS key, %1$s AS name,
                    material, kind, currency, %2$s
                FROM books WHERE slot <> 'not-received:' AND (:side = 'account' OR :all OR %3$s)
                GROUP BY %1$s, material, kind, currency) AS t
            WHERE key > :after
                AND (quantity_then <> 0 OR minor_then <> 0 OR quantity_now <> 0 OR minor_now <> 0)
            ORDER BY key LIMIT :limit\
            """.formatted(by.column(), SUMS, STOCK), by, at, knownAt)
                .param("all", by != AsOfBy.ITEM)
                .param("after", after)
                .param("limit", limit)
                .query(PastBooks::row)
                .list();
    }

    /** What stock was worth, or what accounts had paid. */
    List<AsOf.Total> totals(AsOfBy by, Instant at, Instant knownAt) {
        return at(BOOKS + """
            SELECT currency, %1$s FROM books
            WHERE currency <> '' AND (:side = 'account' OR %2$s)
            GROUP BY currency ORDER BY currency\
            """.formatted(SUMS, STOCK), by, at, knownAt)
                .query((row, number) ->
                        new AsOf.Total(row.getString("currency"), row.getLong("minor_then"), row.getLong("minor_now")))
                .list();
    }

    /** One page of reels and batches with what of them was in stock; each is added up from its own lines. */
    List<AsOf.Row> holdings(Instant at, Instant knownAt, String after, int limit) {
        return jdbc.sql("""
            WITH page AS (
                SELECT holding, id FROM ledger_place
                WHERE holding <> 'pool' AND (holding, id) > (:afterHolding, :afterId)
                GROUP BY holding, id ORDER BY holding, id LIMIT :limit),
            books AS (
                SELECT l.holding, l.id, l.material, l.kind, l.currency, l.recorded_at <= :knownAt AS known,
                    s.quantity, CASE WHEN l.holding = 'reel' THEN s.minor ELSE 0 END AS minor
                FROM page p JOIN ledger_line l USING (holding, id) %1$s
                WHERE l.happened_at <= :at AND s.side = 'place' AND %2$s)
            SELECT p.holding || '|' || p.id AS key, p.holding || ' ' || p.id AS name,
                coalesce(max(nullif(material, '')), '') AS material,
                coalesce(max(nullif(kind, '')), '') AS kind,
                coalesce(max(nullif(currency, '')), '') AS currency,
                coalesce(sum(quantity) FILTER (WHERE known), 0) AS quantity_then,
                coalesce(sum(minor) FILTER (WHERE known), 0) AS minor_then,
                coalesce(sum(quantity), 0) AS quantity_now, coalesce(sum(minor), 0) AS minor_now
            FROM page p LEFT JOIN books b USING (holding, id)
            GROUP BY p.holding, p.id ORDER BY p.holding, p.id\
            """.formatted(SIDES, STOCK))
                .param("afterHolding", after.isEmpty() ? "" : after.substring(0, after.indexOf('|')))
                .param("afterId", after.substring(after.indexOf('|') + 1))
                .param("limit", limit)
                .param("at", time(at))
                .param("knownAt", time(knownAt))
                .query(PastBooks::row)
                .list();
    }

    private StatementSpec at(String sql, AsOfBy by, Instant at, Instant knownAt) {
        Instant day = at.truncatedTo(ChronoUnit.DAYS);
        Instant knownDay = knownAt.truncatedTo(ChronoUnit.DAYS);
        return jdbc.sql(sql)
                .param("side", by.side())
                .param("day", time(day).toLocalDate())
                .param("dayStart", time(day))
                .param("at", time(at))
                .param("knownDay", time(knownDay).toLocalDate())
                .param("knownStart", time(knownDay))
                .param("knownAt", time(knownAt));
    }

    private static OffsetDateTime time(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }

    private static AsOf.Row row(ResultSet row, int number) throws SQLException {
        return new AsOf.Row(
                row.getString("key"),
                row.getString("name"),
                row.getString("material"),
                row.getString("kind"),
                row.getString("currency"),
                row.getLong("quantity_then"),
                row.getLong("minor_then"),
                row.getLong("quantity_now"),
                row.getLong("minor_now"));
    }
}

package org.bandtrail.supplystock.books;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the trial from the sums by month; months before are added up, lines are never read. */
@Repository
public class Trials {
    private static final String STOCK = "place ~ '^(set-aside|depot|in-transit|vehicle|crew|missing):'";
    private static final String SUMS = """
        sum(in_quantity - out_quantity + adjusted_quantity) FILTER (WHERE period < :period) AS opening,
        sum(in_quantity) FILTER (WHERE period = :period) AS came,
        sum(out_quantity) FILTER (WHERE period = :period) AS went,
        sum(adjusted_quantity) FILTER (WHERE period = :period) AS adjusted,
        sum(in_quantity - out_quantity + adjusted_quantity) AS closing,
        sum(in_minor - out_minor + adjusted_minor) FILTER (WHERE period < :period) AS opening_minor,
        sum(in_minor) FILTER (WHERE period = :period) AS came_minor,
        sum(out_minor) FILTER (WHERE period = :period) AS went_minor,
        sum(adjusted_minor) FILTER (WHERE period = :period) AS adjusted_minor,
        sum(in_minor - out_minor + adjusted_minor) AS closing_minor
        """;

    private final JdbcClient jdbc;

    Trials(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of rows in which anything stands or moves.
     *
     * @param after key of the last row of the page before, empty for the first page
     */
    public List<TrialRow> rows(String period, String after, int limit) {
        return jdbc.sql("""
            SELECT * FROM (
                SELECT concat_ws('|', material, currency, place) COLLATE "C" AS key, material,
                    max(kind) AS kind, currency, place, %s AS stock, %s
                FROM ledger_trial WHERE period <= :period GROUP BY material, currency, place) AS t
            WHERE key > :after AND (closing <> 0 OR closing_minor <> 0 OR came IS NOT NULL)
            ORDER BY key LIMIT :limit\
            """.formatted(STOCK, SUMS))
                .param("period", period)
                .param("after", after)
                .param("limit", limit)
                .query(Trials::row)
                .list();
    }

    private static TrialRow row(ResultSet row, int number) throws SQLException {
        return new TrialRow(
                row.getString("key"),
                row.getString("material"),
                row.getString("kind"),
                row.getString("currency"),
                row.getString("place"),
                row.getBoolean("stock"),
                row.getLong("opening"),
                row.getLong("came"),
                row.getLong("went"),
                row.getLong("adjusted"),
                row.getLong("closing"),
                row.getLong("opening_minor"),
                row.getLong("came_minor"),
                row.getLong("went_minor"),
                row.getLong("adjusted_minor"),
                row.getLong("closing_minor"));
    }

    /** Stock by kind and currency. */
    List<Trial.Total> totals(String period) {
        return jdbc.sql("""
            SELECT kind, currency, %s FROM ledger_trial
            WHERE period <= :period AND %s AND material <> ''
            GROUP BY kind, currency ORDER BY currency, kind\
            """.formatted(SUMS, STOCK))
                .param("period", period)
                .query((row, number) -> new Trial.Total(
                        row.getString("kind"),
                        row.getString("currency"),
                        row.getLong("opening"),
                        row.getLong("closing"),
                        row.getLong("opening_minor"),
                        row.getLong("closing_minor")))
                .list();
    }

    /** The law of the money, of each currency; stock and accounts are two tables, so the difference is a true check. */
    public List<Trial.Law> law(String period) {
        return jdbc.sql("""
            SELECT currency, sum(paid) AS paid, sum(stock) AS stock, sum(accounts) AS accounts FROM (
                SELECT currency,
                    CASE WHEN place = 'supplier:'
                        THEN -(in_minor - out_minor + adjusted_minor) ELSE 0 END AS paid,
                    CASE WHEN place = 'supplier:'
                        THEN 0 ELSE in_minor - out_minor + adjusted_minor END AS stock, 0 AS accounts
                FROM ledger_trial WHERE period <= :period AND material <> ''
                UNION ALL
                SELECT currency, 0, 0, minor FROM ledger_account
                WHERE period <= :period AND material <> '') AS t
            GROUP BY currency ORDER BY paid DESC, currency\
            """)
                .param("period", period)
                .query((row, number) -> new Trial.Law(
                        row.getString("currency"),
                        row.getLong("paid"),
                        row.getLong("stock"),
                        row.getLong("accounts"),
                        row.getLong("paid") - row.getLong("stock") - row.getLong("accounts")))
                .list();
    }

    /**
     * Items and places whose months do not add up to what the running balances say; empty in sound books. Reads every
     * balance, so it is for an audit and for the close of a month, not for a list.
     */
    public List<Differing> recount() {
        return jdbc.sql("""
            WITH held AS (
                SELECT coalesce(h.material, '') AS material, p.place, sum(p.quantity) AS quantity,
                    sum(p.value_minor) AS minor
                FROM ledger_place p LEFT JOIN ledger_holding h USING (holding, id)
                WHERE p.holding <> 'pool' GROUP BY 1, 2
                UNION ALL
                SELECT split_part(id, ' ', 1), place, 0, sum(value_minor) FROM ledger_place
                WHERE holding = 'pool' GROUP BY 1, 2),
            by_slot AS (
                SELECT material, CASE WHEN place ~ '^(tree|bag|disposed|slit):'
                    THEN split_part(place, ':', 1) || ':' ELSE place END AS place, quantity, minor
                FROM held),
            both_ways AS (
                SELECT material, place, quantity, minor FROM by_slot
                UNION ALL
                SELECT material, place, -(in_quantity - out_quantity + adjusted_quantity),
                    -(in_minor - out_minor + adjusted_minor) FROM ledger_trial
                WHERE place <> 'not-received:')
            SELECT material, place, sum(quantity) AS quantity, sum(minor) AS minor FROM both_ways
            GROUP BY 1, 2 HAVING sum(quantity) <> 0 OR sum(minor) <> 0 ORDER BY 1, 2\
            """)
                .query((row, number) -> new Differing(
                        row.getString("material"),
                        row.getString("place"),
                        row.getLong("quantity"),
                        row.getLong("minor")))
                .list();
    }

    /** By how much the running balance of an item at a place is above the sum of its months. */
    public record Differing(String materialCode, String place, long quantity, long minor) {}
}

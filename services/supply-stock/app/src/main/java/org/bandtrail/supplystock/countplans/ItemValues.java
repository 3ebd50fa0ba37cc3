package org.bandtrail.supplystock.countplans;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.supplystock.countrules.CountRules.ValueBasis;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What each item is worth, by what was used of it or by what lies in stock; at the cost of each reel and batch. */
@Repository
class ItemValues {
    private static final int YEAR = 365;
    private static final String HOLDINGS = """
            (SELECT 'reel' AS holding, id, material, currency, bought, cost_minor, in_depot FROM reel_balance
             UNION ALL
             SELECT 'batch', id, material, currency, bought, cost_minor, in_depot FROM batch_balance)""";

    private final JdbcClient jdbc;

    ItemValues(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The value of every item that was ever received, 0 included. */
    List<ValueClasses.ItemValue> by(ValueBasis basis, LocalDate today) {
        String quantity = basis == ValueBasis.USED ? """
                  coalesce((SELECT sum(u.quantity) FROM use_of_day u WHERE u.holding = h.holding AND u.id = h.id
                             AND u.day > :since), 0)""" : "greatest(h.in_depot, 0)";
        return jdbc.sql("""
                        SELECT material, currency, sum(round(used * cost_minor / bought))::bigint AS value
                        FROM (SELECT h.material, h.currency, h.cost_minor, h.bought, (%s)::numeric AS used FROM %s h
                               WHERE h.bought > 0 AND h.currency IS NOT NULL AND h.material IS NOT NULL) AS each
                        GROUP BY material, currency ORDER BY material, currency""".formatted(quantity, HOLDINGS))
                .param("since", today.minusDays(YEAR))
                .query((row, number) ->
                        new ValueClasses.ItemValue(row.getString(1), row.getString(2), Math.max(0, row.getLong(3))))
                .list();
    }

    /** What lies where: every depot and bin with every item in it. */
    List<Lying> lying() {
        return jdbc.sql("""
                        SELECT place, material, kind, count(*) AS holdings FROM (
                            SELECT 'depot:' || p.place_id AS place, b.material, b.kind
                            FROM reel_place p JOIN reel_balance b ON b.id = p.id
                            WHERE p.place_kind = 'depot' AND p.quantity > 0 AND b.material IS NOT NULL
                            UNION ALL
                            SELECT 'depot:' || p.place_id, b.material, b.kind
                            FROM batch_place p JOIN batch_balance b ON b.id = p.id
                            WHERE p.place_kind = 'depot' AND p.quantity > 0 AND b.material IS NOT NULL) AS there
                        GROUP BY place, material, kind ORDER BY place, material""")
                .query((row, number) -> new Lying(
                        row.getString("place"),
                        row.getString("material"),
                        row.getString("kind"),
                        row.getLong("holdings")))
                .list();
    }

    /** @param holdings how many reels or batches of the item lie there */
    record Lying(String place, String material, String kind, long holdings) {}
}

package org.bandtrail.supplystock.purchases;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is ordered and has not come yet: in quantity for whoever orders, in money for whoever pays. */
@Repository
public class OnOrder {
    private final JdbcClient jdbc;

    OnOrder(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** An item at the depot it is to be delivered to. */
    public record At(String material, String depotId) {}

    /**
     * What is still to come.
     *
     * @param quantity millimetres of tape and mesh, pieces of fasteners
     * @param nextOn earliest day something of it is expected
     */
    public record ToCome(long quantity, LocalDate nextOn) {}

    /**
     * Money ordered and not yet received, for one item, site and grant.
     *
     * @param siteId site the order line names, or null
     * @param grant grant the order line names, or null
     * @param minor minor units of the currency
     * @param quantity millimetres or pieces still to come
     */
    public record Committed(
            String materialCode,
            @Nullable String siteId,
            @Nullable String grant,
            String currency,
            long minor,
            long quantity) {}

    /** What is still to come of every item at every depot. */
    public Map<At, ToCome> toCome() {
        Map<At, ToCome> toCome = new HashMap<>();
        jdbc.sql("""
                        SELECT l.material, p.depot_id, sum(l.remaining)::bigint AS quantity, min(p.expected_on) AS next_on
                        FROM purchase_line l JOIN purchase p USING (purchase_id) WHERE l.remaining > 0
                        GROUP BY l.material, p.depot_id""").query(row -> {
            toCome.put(
                    new At(row.getString("material"), row.getString("depot_id")),
                    new ToCome(row.getLong("quantity"), row.getObject("next_on", LocalDate.class)));
        });
        return toCome;
    }

    /** Everything committed, by item, site, grant and currency. */
    public List<Committed> committed() {
        return jdbc.sql("""
                        SELECT l.material, l.site_id, l.grant_ref, p.currency, sum(l.committed)::bigint AS minor,
                               sum(l.remaining)::bigint AS quantity
                        FROM purchase_line l JOIN purchase p USING (purchase_id) WHERE l.remaining > 0
                        GROUP BY l.material, l.site_id, l.grant_ref, p.currency
                        ORDER BY l.material, l.site_id, l.grant_ref, p.currency""")
                .query((row, number) -> new Committed(
                        row.getString("material"),
                        row.getString("site_id"),
                        row.getString("grant_ref"),
                        row.getString("currency"),
                        row.getLong("minor"),
                        row.getLong("quantity")))
                .list();
    }
}

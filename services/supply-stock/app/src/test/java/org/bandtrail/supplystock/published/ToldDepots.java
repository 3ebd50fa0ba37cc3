package org.bandtrail.supplystock.published;

import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Adds up what was told of the depots, and reads what lies there, both as {@code reel R-0001 at depot:NORTH}. */
public final class ToldDepots {
    private ToldDepots() {}

    /** The sums of all changes told of reels and batches whose identity begins with this. */
    public static Map<String, Long> told(JdbcClient jdbc, String prefix) {
        Map<String, Long> sums = new TreeMap<>();
        jdbc.sql("""
                SELECT o.data->>'holding' || ' ' || (o.data->>'id') || ' at '
                       || CASE WHEN (c->>'setAside')::boolean THEN 'set-aside:' ELSE 'depot:' END
                       || (c->>'depotId') || coalesce('/' || (c->>'bin'), ''), sum((c->>'change')::bigint)
                FROM outbox o CROSS JOIN LATERAL json_array_elements(o.data->'changes') c
                WHERE o.type = 'supply-stock.depot-stock-changed.v1' AND o.data->>'id' LIKE ? || '%'
                GROUP BY 1 HAVING sum((c->>'change')::bigint) <> 0""").param(prefix).query(row -> {
            sums.put(row.getString(1), row.getLong(2));
        });
        return sums;
    }

    /** What lies in depots by the books. */
    public static Map<String, Long> there(JdbcClient jdbc, String prefix) {
        Map<String, Long> there = new TreeMap<>();
        jdbc.sql("""
                SELECT holding || ' ' || id || ' at ' || place_kind || ':' || place_id, quantity
                FROM (SELECT 'reel' AS holding, id, place_kind, place_id, quantity FROM reel_place
                      UNION ALL SELECT 'batch', id, place_kind, place_id, quantity FROM batch_place) p
                WHERE place_kind IN ('depot', 'set-aside') AND quantity <> 0 AND id LIKE ? || '%'""").param(prefix).query(row -> {
            there.put(row.getString(1), row.getLong(2));
        });
        return there;
    }
}

package org.bandtrail.supplystock.whereabouts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.supplystock.whereabouts.Trail.Stretch;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the sums that are kept beside the balances. */
@Repository
class WhereaboutsReads {
    private static final String SUMS = """
            sum(received), sum(set_aside), sum(in_depot), sum(in_transit), sum(in_vehicle), sum(with_crew), sum(on_tree),
            sum(in_bag), sum(disposed), sum(slit), sum(missing), sum(written_off)""";

    private final JdbcClient jdbc;

    WhereaboutsReads(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Trail trail() {
        Map<String, Stretch> stretches = new HashMap<>();
        jdbc.sql("""
                        SELECT kind AS station, %1$s FROM reel_sum GROUP BY 1
                        UNION ALL
                        SELECT 'FASTENER', %1$s FROM batch_sum HAVING count(*) > 0""".formatted(SUMS))
                .query((row, number) -> stretches.put(
                        row.getString(1),
                        new Stretch(
                                row.getLong(2),
                                row.getLong(3),
                                row.getLong(4),
                                row.getLong(5),
                                row.getLong(6),
                                row.getLong(7),
                                row.getLong(8),
                                row.getLong(9),
                                row.getLong(10),
                                row.getLong(11),
                                row.getLong(12),
                                row.getLong(13))))
                .list();
        return new Trail(
                stretches.getOrDefault("TAPE", Stretch.NOTHING),
                stretches.getOrDefault("MESH", Stretch.NOTHING),
                stretches.getOrDefault("FASTENER", Stretch.NOTHING),
                stretches.getOrDefault("UNKNOWN", Stretch.NOTHING));
    }

    /**
     * One page of places with something at them. Both halves are read in order and no further than the page; a place
     * has at most three rows of reels (tape, mesh, unknown) and two of batches.
     */
    List<AtPlace> byPlace(@Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT place, sum(tape), sum(mesh), sum(pieces)
                        FROM ((SELECT place, CASE kind WHEN 'MESH' THEN 0 ELSE quantity END AS tape,
                                      CASE kind WHEN 'MESH' THEN quantity ELSE 0 END AS mesh, 0 AS pieces
                               FROM reel_at_place WHERE quantity <> 0 AND place > :after AND place <> 'supplier:'
                               ORDER BY place LIMIT :rows)
                              UNION ALL
                              (SELECT place, 0, 0, quantity FROM batch_at_place
                               WHERE quantity <> 0 AND place > :after AND place <> 'supplier:'
                               ORDER BY place LIMIT :rows)) AS everything
                        GROUP BY place ORDER BY place LIMIT :limit""")
                .param("after", after == null ? "" : after)
                .param("rows", 3 * limit)
                .param("limit", limit)
                .query((row, number) -> new AtPlace(row.getString(1), row.getLong(2), row.getLong(3), row.getLong(4)))
                .list();
    }

    /** What hangs on trees now, by site: each tree is added up once, then joined, so that nothing has to be sorted. */
    List<AtSite> bySite() {
        return jdbc.sql("""
                        SELECT t.site_id, count(*), sum(e.tape), sum(e.mesh), sum(e.pieces)
                        FROM (SELECT substr(place, 6) AS tree_id, sum(tape) AS tape, sum(mesh) AS mesh, sum(pieces) AS pieces
                              FROM (SELECT place, CASE kind WHEN 'MESH' THEN 0 ELSE quantity END AS tape,
                                           CASE kind WHEN 'MESH' THEN quantity ELSE 0 END AS mesh, 0 AS pieces
                                    FROM reel_at_place WHERE quantity <> 0 AND place > 'tree:' AND place < 'tree;'
                                    UNION ALL
                                    SELECT place, 0, 0, quantity FROM batch_at_place
                                    WHERE quantity <> 0 AND place > 'tree:' AND place < 'tree;') AS there
                              GROUP BY place) e
                        JOIN tree_site t ON t.tree_id = e.tree_id
                        GROUP BY t.site_id ORDER BY t.site_id""")
                .query((row, number) ->
                        new AtSite(row.getString(1), row.getLong(2), row.getLong(3), row.getLong(4), row.getLong(5)))
                .list();
    }

    /** @param place text form of a place */
    record AtPlace(String place, long tapeMm, long meshMm, long pieces) {}

    /** @param trees trees with something on them */
    record AtSite(String siteId, long trees, long tapeMm, long meshMm, long pieces) {}
}

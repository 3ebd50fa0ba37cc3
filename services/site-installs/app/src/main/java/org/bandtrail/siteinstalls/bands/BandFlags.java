package org.bandtrail.siteinstalls.bands;

import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads what was found about bands and whether it is still so. The finding stays stored as it was; what has become of
 * it is worked out anew on every reading, because a tree can be registered later, a reel can be told of later and the
 * other band of a tree can come down. What is about a moment, a late report for example, stays as it was for ever.
 */
final class BandFlags {
    private static final String FLAGS = """
            SELECT f.band_id, f.flag, f.field, f.message,
                   CASE
                     WHEN f.flag IN ('recorded-late', 'clock-ahead', 'band-fitted-before') THEN TRUE
                     WHEN f.flag = 'tree-unknown'
                       THEN NOT EXISTS (SELECT FROM tree t WHERE t.tree_id = b.tree_id)
                     WHEN f.flag = 'site-unknown'
                       THEN NOT EXISTS (SELECT FROM site s WHERE s.site_id = b.site_id)
                     WHEN f.flag = 'tape-reel-unknown'
                       THEN NOT EXISTS (SELECT FROM known_reel k WHERE k.reel_id = b.tape_reel)
                     WHEN f.flag = 'mesh-reel-unknown'
                       THEN b.mesh_reel IS NOT NULL
                            AND NOT EXISTS (SELECT FROM known_reel k WHERE k.reel_id = b.mesh_reel)
                     WHEN b.state <> 'up' THEN FALSE
                     WHEN f.flag = 'guard-missing' THEN b.mesh_reel IS NULL
                     WHEN f.flag = 'tree-already-banded'
                       THEN (SELECT count(*) FROM band o WHERE o.tree_id = b.tree_id AND o.state = 'up')
                            > COALESCE((SELECT p.bands_per_tree FROM cut_policy p
                                        WHERE p.version = b.policy_version), 1)
                     ELSE TRUE
                   END AS open
            FROM band_flag f JOIN band b ON b.band_id = f.band_id
            WHERE f.band_id = ANY (?)
            ORDER BY f.position, f.ordinal""";
    private final JdbcClient jdbc;

    BandFlags(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The flags of these bands in the order of their fittings; a band without any is not in the map. */
    Map<String, List<BandView.Flag>> of(Collection<String> bands) {
        Map<String, List<BandView.Flag>> flags = new HashMap<>();
        jdbc.sql(FLAGS).param(bands.toArray(String[]::new)).query((ResultSet row) -> {
            flags.computeIfAbsent(row.getString("band_id"), band -> new ArrayList<>())
                    .add(new BandView.Flag(
                            row.getString("flag"),
                            row.getString("field"),
                            row.getString("message"),
                            row.getBoolean("open")));
        });
        return flags;
    }
}

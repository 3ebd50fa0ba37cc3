package org.bandtrail.siteinstalls.hostchecks;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All host checks, and the bands whose tree did not pass one. */
@Repository
public class HostChecks {
    private final JdbcClient jdbc;

    HostChecks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every check of one tree and of those that turned out to be it, the latest first. */
    public List<HostCheckView> of(TreeId treeId) {
        return jdbc.sql("""
                        SELECT * FROM host_check
                        WHERE tree_id = ANY (ARRAY(SELECT :tree UNION ALL
                                                   SELECT other.tree_id FROM tree AS other
                                                   WHERE other.merged_into = :tree))
                        ORDER BY happened_at DESC, position DESC""")
                .param("tree", treeId.value())
                .query(HostChecks::row)
                .list();
    }

    /** The latest check of each of these trees that has one, its own or of a tree that turned out to be it. */
    public Map<TreeId, HostCheckView> latest(Collection<TreeId> trees) {
        return jdbc
                .sql("""
                        WITH asked AS (SELECT unnest(?::text[]) AS owner),
                             trunk AS (SELECT owner, owner AS tree_id FROM asked
                                       UNION ALL
                                       SELECT owner, tree.tree_id FROM asked JOIN tree ON tree.merged_into = owner)
                        SELECT DISTINCT ON (owner) owner AS tree_id, position, pest, key_version, outcome,
                               species_code, confidence_percent, answers, by_person, happened_at
                        FROM trunk JOIN host_check ON host_check.tree_id = trunk.tree_id
                        ORDER BY owner, happened_at DESC, position DESC""")
                .param(trees.stream().map(TreeId::value).distinct().toArray(String[]::new))
                .query(HostChecks::row)
                .list()
                .stream()
                .collect(Collectors.toMap(check -> new TreeId(check.treeId()), check -> check));
    }

    /**
     * Bands that hang on a tree nobody checked, that is no host, of which the answers do not tell, or that is gone.
     *
     * @param site only this site, null for all
     * @param tree only this tree, null for all
     * @param after last band of the page before, null for the first
     */
    public List<HostCheckView.Finding> findings(
            @Nullable String site, @Nullable String tree, @Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT band_id, band.tree_id, band.site_id,
                               CASE WHEN tree.gone_at IS NOT NULL THEN 'gone'
                                    WHEN last.outcome = 'NOT_HOST' THEN 'no-host'
                                    WHEN last.outcome = 'UNSURE' THEN 'unsure'
                                    ELSE 'not-checked' END AS finding
                        FROM band
                        LEFT JOIN tree AS tagged ON tagged.tree_id = band.tree_id
                        LEFT JOIN tree ON tree.tree_id = coalesce(tagged.merged_into, band.tree_id)
                        LEFT JOIN LATERAL (SELECT outcome FROM host_check
                                           WHERE host_check.tree_id = ANY (
                                               ARRAY(SELECT band.tree_id UNION ALL SELECT tree.tree_id UNION ALL
                                                     SELECT other.tree_id FROM tree AS other
                                                     WHERE other.merged_into = tree.tree_id))
                                           ORDER BY happened_at DESC, position DESC LIMIT 1) AS last ON TRUE
                        WHERE band.state = 'up' AND band.tree_id IS NOT NULL AND band_id > :after
                          AND (CAST(:site AS text) IS NULL OR band.site_id = :site)
                          AND (CAST(:tree AS text) IS NULL OR band.tree_id = :tree OR tree.tree_id = :tree)
                          AND (tree.gone_at IS NOT NULL OR last.outcome IS DISTINCT FROM 'HOST')
                        ORDER BY band_id LIMIT :limit""")
                .param("after", after == null ? "" : after)
                .param("site", site)
                .param("tree", tree)
                .param("limit", limit)
                .query((row, number) -> new HostCheckView.Finding(
                        row.getString("band_id"),
                        row.getString("tree_id"),
                        row.getString("site_id"),
                        row.getString("finding"),
                        message(row.getString("finding"), row.getString("band_id"), row.getString("tree_id"))))
                .list();
    }

    private static String message(String finding, String band, String tree) {
        return switch (finding) {
            case "gone" ->
                "Band %s is up on tree %s, which is gone. Take the band down, or correct the tree."
                        .formatted(band, tree);
            case "no-host" ->
                "Band %s is up on tree %s, which is no host. Take it down, or check the tree again."
                        .formatted(band, tree);
            case "unsure" ->
                "Band %s is up on tree %s; its host check is not sure. Look again with fruit or leaves."
                        .formatted(band, tree);
            default ->
                "Band %s is up on tree %s, which nobody has checked. Do the host check at the next visit."
                        .formatted(band, tree);
        };
    }

    private static HostCheckView row(ResultSet row, int number) throws SQLException {
        return new HostCheckView(
                row.getString("tree_id"),
                row.getString("pest"),
                row.getInt("key_version"),
                row.getString("outcome"),
                row.getString("species_code"),
                row.getInt("confidence_percent"),
                answers(row.getString("answers")),
                row.getString("by_person"),
                row.getObject("happened_at", OffsetDateTime.class).toInstant());
    }

    private static List<HostAnswer> answers(String text) {
        return Arrays.stream(text.split(" "))
                .filter(pair -> !pair.isEmpty())
                .map(pair -> pair.split("=", 2))
                .map(pair -> new HostAnswer(pair[0], pair[1]))
                .toList();
    }
}

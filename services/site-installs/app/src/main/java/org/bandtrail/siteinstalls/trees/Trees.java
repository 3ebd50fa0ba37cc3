package org.bandtrail.siteinstalls.trees;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.sites.Point;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of trees. */
@Repository
public class Trees {
    private static final String COLUMNS = """
            SELECT tree.*,
                   (SELECT count(*) FROM band WHERE band.tree_id = tree.tree_id AND state = 'up')
                   + (SELECT count(*) FROM tree AS other JOIN band ON band.tree_id = other.tree_id AND state = 'up'
                      WHERE other.merged_into = tree.tree_id) AS bands_up
            FROM tree
            """;
    private final JdbcClient jdbc;
    private final TreeHistories histories;

    Trees(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.histories = new TreeHistories(jdbc);
    }

    /**
     * One page by identity.
     *
     * @param choice which of them
     * @param site only this site, null for all
     * @param text part of identity, tag, species or species code, null for all
     * @param after last identity of the page before, null for the first
     */
    public List<TreeView> page(
            TreeChoice choice, @Nullable String site, @Nullable String text, @Nullable String after, int limit) {
        return jdbc.sql(COLUMNS + """
                        WHERE tree_id > :after
                          AND (CAST(:site AS text) IS NULL OR site_id = :site)
                          AND (CAST(:like AS text) IS NULL
                               OR tree_id ILIKE :like OR tag ILIKE :like OR species ILIKE :like
                               OR species_code ILIKE :like)
                          AND %s
                        ORDER BY tree_id LIMIT :limit""".formatted(choice.condition()))
                .param("after", after == null ? "" : after)
                .param("site", site)
                .param("like", text == null ? null : "%" + text.replaceAll("([\\\\%_])", "\\\\$1") + "%")
                .param("limit", limit)
                .query(Trees::row)
                .list();
    }

    /** Those of the trees that are registered, by identity. */
    public Map<TreeId, TreeView> registered(Collection<TreeId> trees) {
        return jdbc
                .sql(COLUMNS + "WHERE tree_id = ANY (?)")
                .param(trees.stream().map(TreeId::value).toArray(String[]::new))
                .query(Trees::row)
                .list()
                .stream()
                .collect(Collectors.toMap(tree -> new TreeId(tree.treeId()), tree -> tree));
    }

    /** One tree with everything that happened to it, newest first, empty if it is not registered. */
    public Optional<TreeView.Whole> whole(TreeId treeId) {
        return jdbc.sql(COLUMNS + "WHERE tree_id = ?")
                .param(treeId.value())
                .query(Trees::row)
                .optional()
                .map(tree -> new TreeView.Whole(
                        tree, histories.steps(treeId), histories.bands(treeId), histories.merged(treeId)));
    }

    private static TreeView row(ResultSet row, int number) throws SQLException {
        return new TreeView(
                row.getString("tree_id"),
                row.getString("site_id"),
                row.getString("tag"),
                row.getString("species"),
                row.getString("species_code"),
                degreesOrNull(row, "latitude_e7"),
                degreesOrNull(row, "longitude_e7"),
                row.getObject("girth_mm", Long.class),
                row.getObject("girth_height_mm", Long.class),
                momentOrNull(row, "girth_measured_at"),
                row.getString("note"),
                momentOrNull(row, "gone_at"),
                row.getString("gone_how"),
                row.getLong("bands_up"),
                row.getString("merged_into"),
                momentOrNull(row, "merged_at"));
    }

    private static @Nullable BigDecimal degreesOrNull(ResultSet row, String column) throws SQLException {
        Integer e7 = row.getObject(column, Integer.class);
        return e7 == null ? null : Point.degrees(e7);
    }

    static @Nullable Instant momentOrNull(ResultSet row, String column) throws SQLException {
        OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }
}

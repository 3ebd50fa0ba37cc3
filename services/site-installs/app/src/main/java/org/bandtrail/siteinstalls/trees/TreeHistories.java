package org.bandtrail.siteinstalls.trees;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.bandtrail.kernel.TreeId;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What happened at one trunk: to the tree itself and to every tree that turned out to be it. */
final class TreeHistories {
    private final JdbcClient jdbc;

    TreeHistories(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Everything that happened, newest first. */
    List<TreeView.Step> steps(TreeId treeId) {
        return jdbc.sql("""
                        SELECT step.*, tree.merged_into = :tree AND step.recorded_at > tree.merged_at AS after_merge
                        FROM tree JOIN tree_step AS step ON step.tree_id = tree.tree_id
                        WHERE tree.tree_id = :tree OR tree.merged_into = :tree
                        ORDER BY step.happened_at DESC, step.position DESC""")
                .param("tree", treeId.value())
                .query(TreeHistories::step)
                .list();
    }

    /** The bands that hang or hung there, those fitted last first. */
    List<TreeView.BandOnTree> bands(TreeId treeId) {
        return jdbc.sql("""
                        SELECT band.* FROM band
                        WHERE tree_id = ANY (ARRAY(SELECT tree_id FROM tree
                                                   WHERE tree.tree_id = :tree OR merged_into = :tree))
                        ORDER BY fitted_at DESC NULLS LAST, band_id""")
                .param("tree", treeId.value())
                .query((row, number) -> new TreeView.BandOnTree(
                        row.getString("band_id"),
                        row.getString("tree_id"),
                        row.getString("site_id"),
                        row.getString("state"),
                        Trees.momentOrNull(row, "fitted_at")))
                .list();
    }

    /** The trees that turned out to be this one. */
    List<TreeView.Merged> merged(TreeId treeId) {
        return jdbc.sql("SELECT tree_id, tag, merged_at FROM tree WHERE merged_into = ? ORDER BY tree_id")
                .param(treeId.value())
                .query((row, number) ->
                        new TreeView.Merged(row.getString("tree_id"), row.getString("tag"), moment(row, "merged_at")))
                .list();
    }

    private static TreeView.Step step(ResultSet row, int number) throws SQLException {
        return new TreeView.Step(
                row.getString("tree_id"),
                row.getBoolean("after_merge"),
                row.getString("what"),
                moment(row, "happened_at"),
                moment(row, "recorded_at"),
                row.getString("by_person"),
                row.getObject("girth_mm", Long.class),
                row.getObject("girth_height_mm", Long.class),
                row.getString("band_id"),
                row.getString("note"));
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}

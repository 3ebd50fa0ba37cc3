package org.bandtrail.siteinstalls.duplicates;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * What was decided of pairs of trees, one line for each decision; the last one of a pair counts. Written within the
 * transaction of the command, so that two people who decide at once see each other.
 */
@Repository
class PairDecisions {
    private static final String LATEST = """
            SELECT * FROM (SELECT DISTINCT ON (first_tree, second_tree) * FROM tree_pair_decision
                           WHERE %s ORDER BY first_tree, second_tree, number DESC) AS latest
            WHERE decision <> 'open'
            """;
    private final JdbcClient jdbc;

    PairDecisions(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Waits until nobody else is deciding; lasts until the transaction ends. */
    void oneAtATime() {
        jdbc.sql("SELECT pg_advisory_xact_lock(hashtext('tree-pair-decision'))")
                .query((row, number) -> true)
                .single();
    }

    /** What was decided of the pair last, empty if nothing or if it was taken back. */
    Optional<PairDecision> of(TreeId one, TreeId other) {
        return jdbc.sql(LATEST.formatted("first_tree = ? AND second_tree = ?"))
                .params(first(one, other), second(one, other))
                .query(PairDecisions::row)
                .optional();
    }

    /** Every merge in which the tree stays or goes. */
    List<PairDecision> merges(TreeId tree) {
        return jdbc.sql(LATEST.formatted("? IN (first_tree, second_tree)") + "AND kept_tree IS NOT NULL")
                .param(tree.value())
                .query(PairDecisions::row)
                .list();
    }

    /**
     * What holds, the latest first.
     *
     * @param before number of the last line of the page before, null for the first
     */
    List<PairDecision> page(@Nullable Long before, int limit) {
        return jdbc.sql(LATEST.formatted("TRUE") + "AND number < ? ORDER BY number DESC LIMIT ?")
                .params(before == null ? Long.MAX_VALUE : before, limit)
                .query(PairDecisions::row)
                .list();
    }

    /** Notes that one of two is kept for both. */
    void same(TreeId kept, TreeId merged, String reason, PersonId by, Instant at) {
        add(kept, merged, "same", kept.value(), reason, by, at);
    }

    /** Notes that two are not the same. */
    void apart(TreeId one, TreeId other, String reason, PersonId by, Instant at) {
        add(one, other, "apart", null, reason, by, at);
    }

    /** Notes that the decision before no longer holds. */
    void open(TreeId one, TreeId other, String reason, PersonId by, Instant at) {
        add(one, other, "open", null, reason, by, at);
    }

    private void add(
            TreeId one, TreeId other, String decision, @Nullable String kept, String reason, PersonId by, Instant at) {
        jdbc.sql("""
                        INSERT INTO tree_pair_decision (first_tree, second_tree, decision, kept_tree, reason,
                                                        by_person, decided_at)
                        VALUES (:first, :second, :decision, :kept, :reason, :by, :at)""")
                .param("first", first(one, other))
                .param("second", second(one, other))
                .param("decision", decision)
                .param("kept", kept)
                .param("reason", reason)
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    private static String first(TreeId one, TreeId other) {
        return one.value().compareTo(other.value()) < 0 ? one.value() : other.value();
    }

    private static String second(TreeId one, TreeId other) {
        return one.value().compareTo(other.value()) < 0 ? other.value() : one.value();
    }

    private static PairDecision row(ResultSet row, int number) throws SQLException {
        return new PairDecision(
                row.getLong("number"),
                row.getString("first_tree"),
                row.getString("second_tree"),
                row.getString("kept_tree"),
                row.getString("reason"),
                row.getString("by_person"),
                row.getObject("decided_at", OffsetDateTime.class).toInstant());
    }
}

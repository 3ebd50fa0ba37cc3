package org.bandtrail.supplystock.spend;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import org.bandtrail.supplystock.spend.SpendLine.Asked;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the single charges behind a figure, in the order of the books. */
@Repository
class SpendLines {
    private final JdbcClient jdbc;

    SpendLines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A charge with its place in the order of the books, which is the cursor of the next page. */
    record Placed(String cursor, SpendLine line) {}

    /**
     * One page of charges, the oldest first.
     *
     * @param after cursor of the last one of the page before, {@code position.step}, or empty
     */
    List<Placed> page(Asked asked, String after, int limit) {
        String[] cursor = after.isEmpty() ? new String[] {"0", "-1"} : after.split("\\.", 2);
        if (cursor.length != 2 || !(cursor[0] + cursor[1]).matches("\\d+-?\\d+")) {
            throw new IllegalArgumentException("Cursor [%s] is none of ours. Begin without one.".formatted(after));
        }
        return jdbc.sql("""
                        SELECT * FROM ledger_line
                        WHERE account IS NOT NULL AND account NOT LIKE 'slit:%' AND currency <> ''
                          AND (position, step) > (:position, :step) AND period BETWEEN :from AND :through
                          AND (:account::varchar IS NULL OR account = :account)
                          AND (:tree::varchar IS NULL OR tree_id = :tree)
                          AND (:material::varchar IS NULL OR material = :material)
                          AND (:person::varchar IS NULL OR person_id = :person)
                          AND (:what::varchar IS NULL OR what = :what)
                        ORDER BY position, step LIMIT :limit""")
                .param("position", Long.parseLong(cursor[0]))
                .param("step", Integer.parseInt(cursor[1]))
                .param("from", asked.months().from())
                .param("through", asked.months().through())
                .param("account", asked.account())
                .param("tree", asked.treeId())
                .param("material", asked.materialCode())
                .param("person", asked.personId())
                .param("what", asked.what())
                .param("limit", limit)
                .query(SpendLines::placed)
                .list();
    }

    private static Placed placed(ResultSet row, int number) throws SQLException {
        return new Placed(
                row.getLong("position") + "." + row.getInt("step"),
                new SpendLine(
                        row.getString("holding"),
                        row.getString("id"),
                        row.getString("material"),
                        row.getString("kind"),
                        row.getString("what"),
                        row.getString("note"),
                        row.getString("account"),
                        blank(row.getString("tree_id")),
                        blank(row.getString("person_id")),
                        row.getString("currency"),
                        row.getLong("account_quantity"),
                        row.getLong("account_minor"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                        row.getString("period")));
    }

    private static @Nullable String blank(String text) {
        return text.isEmpty() ? null : text;
    }
}

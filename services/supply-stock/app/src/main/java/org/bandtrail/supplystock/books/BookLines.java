package org.bandtrail.supplystock.books;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads lines of the ledger, in the order in which the books learnt of them. */
@Repository
public class BookLines {
    private final JdbcClient jdbc;

    BookLines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Which lines; an empty text asks for all.
     *
     * @param period month they post to
     * @param item material code; {@code -} for lines of no item
     * @param place a place, or {@code tree:}, {@code bag:}, {@code disposed:}, {@code slit:} for all of these
     * @param account who paid
     * @param holding {@code reel} or {@code batch}
     * @param id of the reel or batch
     */
    public record Wanted(String period, String item, String place, String account, String holding, String id) {}

    /**
     * One page of lines.
     *
     * @param after line of the page before, such as {@code 120.1}, or empty
     * @throws IllegalArgumentException if the cursor is none
     */
    public List<LineRow> page(Wanted wanted, String after, int limit) {
        String[] cursor = (after.isEmpty() ? "0.-1" : after).split("\\.", 2);
        if (cursor.length != 2 || !(cursor[0] + cursor[1]).matches("\\d+-?\\d+")) {
            throw new IllegalArgumentException(
                    "Cursor [%s] is no line of the ledger. Take it from next.".formatted(after));
        }
        StringBuilder where = new StringBuilder("(position, step) > (:position, :step)");
        either(where, wanted.period(), "period = :period");
        either(where, wanted.item(), "material = :item");
        either(where, wanted.account(), "account = :account");
        either(where, wanted.holding(), "holding = :holding");
        either(where, wanted.id(), "id = :id");
        either(
                where,
                wanted.place(),
                wanted.place().matches("(tree|bag|disposed|slit):")
                        ? "(source LIKE :place || '%' OR target LIKE :place || '%')"
                        : "(source = :place OR target = :place)");
        return jdbc.sql("SELECT * FROM ledger_line WHERE " + where + " ORDER BY position, step LIMIT :limit")
                .param("position", Long.parseLong(cursor[0]))
                .param("step", Integer.parseInt(cursor[1]))
                .param("period", wanted.period())
                .param("item", wanted.item().equals("-") ? "" : wanted.item())
                .param("account", wanted.account())
                .param("holding", wanted.holding())
                .param("id", wanted.id())
                .param("place", wanted.place())
                .param("limit", limit)
                .query(BookLines::row)
                .list();
    }

    private static void either(StringBuilder where, String value, String condition) {
        if (!value.isEmpty()) {
            where.append(" AND ").append(condition);
        }
    }

    private static LineRow row(ResultSet row, int number) throws SQLException {
        return new LineRow(
                row.getLong("position") + "." + row.getInt("step"),
                row.getString("holding"),
                row.getString("id"),
                row.getString("material"),
                row.getString("kind"),
                row.getString("currency"),
                row.getString("what"),
                row.getBoolean("adjusts"),
                row.getString("note"),
                row.getString("source"),
                row.getString("target"),
                row.getLong("quantity"),
                row.getLong("out_minor"),
                row.getLong("in_minor"),
                row.getString("account"),
                row.getLong("account_quantity"),
                row.getLong("account_minor"),
                row.getString("site_id"),
                row.getString("tree_id"),
                row.getString("person_id"),
                row.getString("by_person"),
                row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
                row.getString("period"));
    }
}

package org.bandtrail.supplystock.holdings;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads the three tables of reels or of batches, lists by keyset so that the thousandth page is as quick as the first.
 */
public final class HoldingReads {
    private static final String COLUMNS = """
            b.id, b.material, b.kind, b.bought, b.received, b.in_depot, b.with_crew, b.on_tree, b.in_bag, b.disposed,
            b.written_off, b.missing, b.set_aside, b.in_vehicle, b.in_transit, b.slit, b.cost_minor, b.charged_minor,
            b.written_off_minor, b.written_down_minor, b.slit_minor, b.currency, b.last_holder,
            b.received_at, b.last_moved_at,
            (SELECT p.place_kind || ':' || p.place_id FROM %1$s_place p
              WHERE p.id = b.id AND p.quantity > 0 AND p.place_kind IN ('set-aside', 'depot', 'in-transit', 'vehicle', 'crew')
              ORDER BY p.quantity DESC, p.place_id LIMIT 1) AS place""";

    /** A bin is asked for by its own name; a depot includes its bins. Each way has an index of its own. */
    private static final String DEPOT_WITH_BINS = "split_part(p.place_id, '/', 1)";

    private static final String AT_PLACE = """
            b.id IN (SELECT p.id FROM %1$s_place p
                     WHERE p.place_kind = :kind AND %2$s = :placeId AND p.quantity <> 0 %3$s)""";

    private final JdbcClient jdbc;
    private final String prefix;

    /** @param prefix {@code reel} or {@code batch} */
    public HoldingReads(JdbcClient jdbc, String prefix) {
        this.jdbc = jdbc;
        this.prefix = prefix;
    }

    /**
     * One page of balances, by identity. Only the conditions that are asked for stand in the statement, so that the
     * database can choose the index for them.
     *
     * @param material only this material, or null
     * @param place only what has a balance at this place, or null
     * @param text only identities or materials that contain this text, or null
     * @param after identity after which the page begins, or null for the first page
     * @param limit at most so many rows
     */
    public List<HoldingRow> page(
            @Nullable String material,
            @Nullable String place,
            @Nullable String text,
            @Nullable String after,
            int limit) {
        Place there = place == null ? null : Place.parse(place);
        List<String> conditions = new ArrayList<>();
        if (material != null) {
            conditions.add("b.material = :material");
        }
        if (there != null) {
            String column = there.bin() == null ? DEPOT_WITH_BINS : "p.place_id";
            // The page begins in the place's own index too, or every earlier reel of the place would be read first.
            conditions.add(AT_PLACE.formatted(prefix, column, after == null ? "" : "AND p.id > :after"));
        }
        if (text != null) {
            conditions.add("(b.id ILIKE :text OR b.material ILIKE :text)");
        }
        if (after != null) {
            conditions.add("b.id > :after");
        }
        String where = conditions.isEmpty() ? "" : " WHERE " + String.join(" AND ", conditions);
        return jdbc.sql(("SELECT " + COLUMNS + " FROM %1$s_balance b" + where + " ORDER BY b.id LIMIT :limit")
                        .formatted(prefix))
                .param("material", material)
                .param("kind", there == null ? null : there.kind().word())
                .param("placeId", there == null ? null : there.id())
                .param("text", text == null ? null : "%" + text.replaceAll("([\\\\%_])", "\\\\$1") + "%")
                .param("after", after)
                .param("limit", limit)
                .query(HoldingReads::row)
                .list();
    }

    /** The balance of one reel or batch, empty if the books have never heard of it. */
    public Optional<HoldingRow> one(String id) {
        return jdbc.sql(("SELECT " + COLUMNS + " FROM %1$s_balance b WHERE b.id = ?").formatted(prefix))
                .param(id)
                .query(HoldingReads::row)
                .optional();
    }

    /** Every place with a balance, in the order of the trail. */
    public List<PlaceBalance> places(String id) {
        return jdbc
                .sql("SELECT place_kind || ':' || place_id, quantity FROM %s_place WHERE id = ? AND quantity <> 0"
                        .formatted(prefix))
                .param(id)
                .query((row, number) -> new PlaceBalance(row.getString(1), row.getLong(2)))
                .list()
                .stream()
                .sorted(java.util.Comparator.comparing(balance -> Place.parse(balance.place())))
                .toList();
    }

    /** The whole history, oldest first, at most a thousand lines. */
    public List<HistoryLine> history(String id) {
        return jdbc.sql("""
                        SELECT what, note, source, target, quantity, account, cost_minor, by_person, happened_at, recorded_at
                        FROM %s_history WHERE id = ? ORDER BY position, step LIMIT 1000""".formatted(prefix))
                .param(id)
                .query((row, number) -> new HistoryLine(
                        row.getString(1),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        row.getLong(5),
                        row.getString(6),
                        row.getLong(7),
                        row.getString(8),
                        row.getObject(9, OffsetDateTime.class).toInstant(),
                        row.getObject(10, OffsetDateTime.class).toInstant()))
                .list();
    }

    private static HoldingRow row(ResultSet row, int number) throws SQLException {
        return new HoldingRow(
                row.getString("id"),
                row.getString("material"),
                row.getString("kind"),
                row.getLong("bought"),
                row.getLong("received"),
                row.getLong("in_depot"),
                row.getLong("with_crew"),
                row.getLong("on_tree"),
                row.getLong("in_bag"),
                row.getLong("disposed"),
                row.getLong("written_off"),
                row.getLong("missing"),
                row.getLong("set_aside"),
                row.getLong("in_vehicle"),
                row.getLong("in_transit"),
                row.getLong("slit"),
                row.getLong("cost_minor"),
                row.getLong("charged_minor"),
                row.getLong("written_off_minor"),
                row.getLong("written_down_minor"),
                row.getLong("slit_minor"),
                row.getString("currency"),
                row.getString("place"),
                row.getString("last_holder"),
                instant(row, "received_at"),
                row.getObject("last_moved_at", OffsetDateTime.class).toInstant());
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }

    /** @param quantity millimetres or pieces, negative if more was taken than the books knew */
    public record PlaceBalance(String place, long quantity) {}

    /**
     * @param what the trade's word, for example {@code fitted}
     * @param quantity millimetres or pieces; 0 on a line that only carries a charge
     * @param account who pays, or null
     */
    public record HistoryLine(
            String what,
            @Nullable String note,
            @Nullable String source,
            @Nullable String target,
            long quantity,
            @Nullable String account,
            long costMinor,
            String by,
            Instant happenedAt,
            Instant recordedAt) {}
}

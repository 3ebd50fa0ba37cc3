package org.bandtrail.supplystock.counts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Counts as people see them. While one is being counted no figure of the books leaves here. */
@Repository
public class Counts {
    private static final String COUNT = """
            SELECT c.*,
                   (SELECT count(*) FROM stock_count_line l WHERE l.count_id = c.count_id) AS lines,
                   (SELECT count(*) FROM stock_count_line l WHERE l.count_id = c.count_id AND c.stage = 'COUNTING'
                       AND l.counted_in IS DISTINCT FROM c.round AND (c.round = 1 OR l.to_recount)) AS open,
                   (SELECT count(*) FROM stock_count_line l WHERE l.count_id = c.count_id AND l.counted <> l.book)
                       AS differing
            FROM stock_count c
            """;

    private final JdbcClient jdbc;

    Counts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of counts, the newest first.
     *
     * @param open only those that are neither approved nor cancelled
     * @param after the count after which the page begins, or null
     */
    public List<CountRow> page(boolean open, @Nullable String after, int limit) {
        return jdbc.sql(COUNT + """
                         WHERE (NOT :open OR c.stage IN ('COUNTING', 'REVIEW'))
                           AND (:after::varchar IS NULL OR (c.opened_at, c.count_id) <
                                (SELECT a.opened_at, a.count_id FROM stock_count a WHERE a.count_id = :after))
                         ORDER BY c.opened_at DESC, c.count_id DESC LIMIT :limit""")
                .param("open", open)
                .param("after", after)
                .param("limit", limit)
                .query(Counts::row)
                .list();
    }

    /** One count with its lines, empty if there is none of this identity. */
    public Optional<CountRow.Whole> whole(String countId) {
        Optional<CountRow> found = jdbc.sql(COUNT + " WHERE c.count_id = ?")
                .param(countId)
                .query(Counts::row)
                .optional();
        return found.map(count -> {
            List<CountRow.Line> lines = jdbc.sql("""
                            SELECT * FROM stock_count_line WHERE count_id = ?
                            ORDER BY place, holding DESC, id""")
                    .param(countId)
                    .query((row, number) -> line(row, count))
                    .list();
            return new CountRow.Whole(count, lines, sums(lines), secondPersonFrom(countId));
        });
    }

    private long secondPersonFrom(String countId) {
        return jdbc.sql("SELECT second_person_from_minor FROM stock_count WHERE count_id = ?")
                .param(countId)
                .query(Long.class)
                .single();
    }

    private static List<Money> sums(List<CountRow.Line> lines) {
        Map<String, Long> sums = lines.stream()
                .map(CountRow.Line::value)
                .filter(Objects::nonNull)
                .collect(Collectors.groupingBy(Money::currency, TreeMap::new, Collectors.summingLong(Money::minor)));
        return sums.entrySet().stream()
                .map(sum -> Money.of(sum.getValue(), sum.getKey()))
                .toList();
    }

    private static CountRow row(ResultSet row, int number) throws SQLException {
        boolean blind = row.getString("stage").equals("COUNTING");
        OffsetDateTime closed = row.getObject("closed_at", OffsetDateTime.class);
        return new CountRow(
                row.getString("count_id"),
                row.getString("place"),
                row.getString("stage"),
                row.getInt("round"),
                row.getLong("lines"),
                row.getLong("open"),
                blind ? null : row.getLong("differing"),
                row.getString("opened_by"),
                row.getObject("opened_at", OffsetDateTime.class).toInstant(),
                row.getString("closed_by"),
                closed == null ? null : closed.toInstant(),
                row.getString("cancelled_because"));
    }

    private static CountRow.Line line(ResultSet row, CountRow count) throws SQLException {
        SheetLine sheet = sheet(row);
        Long counted = row.getObject("counted", Long.class);
        boolean current = !count.blind() || row.getInt("counted_in") == count.round();
        Long difference = count.blind() || counted == null ? null : counted - sheet.book();
        String currency = sheet.currency();
        Place elsewhere = sheet.elsewhere();
        return new CountRow.Line(
                sheet.holding(),
                sheet.id(),
                sheet.place().toString(),
                sheet.material(),
                sheet.kind(),
                sheet.pieces() ? "pieces" : "mm",
                row.getBoolean("on_sheet"),
                count.blind() ? null : sheet.book(),
                current ? counted : null,
                difference,
                difference == null || currency == null ? null : Money.of(sheet.value(Math.abs(difference)), currency),
                count.blind() || elsewhere == null ? null : elsewhere.toString(),
                count.blind() && row.getBoolean("to_recount"),
                List.of((String[]) row.getArray("counted_by").getArray()),
                row.getString("reason"));
    }

    private static SheetLine sheet(ResultSet row) throws SQLException {
        String elsewhere = row.getString("elsewhere");
        return new SheetLine(
                row.getString("holding"),
                row.getString("id"),
                Place.parse(row.getString("place")),
                row.getString("material"),
                row.getString("kind"),
                row.getLong("book"),
                row.getLong("bought"),
                row.getLong("cost_minor"),
                row.getString("currency"),
                elsewhere == null ? null : Place.parse(elsewhere),
                0);
    }

    /** When each material at each place was last counted and approved; keys are place and material. */
    public Map<LastCounted, Instant> lastCounted() {
        Map<LastCounted, Instant> last = new java.util.HashMap<>();
        jdbc.sql("""
                        SELECT l.place, l.material, max(c.opened_at) AS at
                        FROM stock_count_line l JOIN stock_count c ON c.count_id = l.count_id
                        WHERE c.stage = 'APPROVED' AND l.material IS NOT NULL GROUP BY l.place, l.material""").query(row -> {
            last.put(
                    new LastCounted(row.getString("place"), row.getString("material")),
                    row.getObject("at", OffsetDateTime.class).toInstant());
        });
        return last;
    }

    /** A material at a place. */
    public record LastCounted(String place, String material) {}
}

package org.bandtrail.supplystock.counts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the books have at a place, for a sheet; it waits until the books have caught up with what was decided. */
@Repository
class CountSheets {
    /** A sheet is one event and one walk along the shelves; more is counted bin by bin (common practice, no source). */
    static final int LINES = 2_000;

    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final String LINE = """
            SELECT '%1$s' AS holding, b.id, p.place_kind || ':' || p.place_id AS place, b.material, b.kind, p.quantity,
                   b.bought, b.cost_minor, b.currency
            FROM %1$s_place p JOIN %1$s_balance b ON b.id = p.id
            """;

    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    CountSheets(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /**
     * The sheet of a place.
     *
     * @throws CountRefused if it is no depot or bin, or holds too much for one count
     */
    List<SheetLine> of(Place scope) {
        if (scope.kind() != PlaceKind.DEPOT) {
            throw new CountRefused.NotCountable(scope);
        }
        projectors.getObject().caughtUp(PATIENCE);
        String where =
                "WHERE p.place_kind = 'depot' AND p.quantity <> 0 AND (p.place_id = :place OR p.place_id LIKE :bins)";
        List<SheetLine> sheet = jdbc.sql((LINE + where).formatted("reel") + " UNION ALL "
                        + (LINE + where).formatted("batch") + " ORDER BY place, holding DESC, id LIMIT " + (LINES + 1))
                .param("place", scope.id())
                .param("bins", scope.bin() == null ? scope.id() + "/%" : scope.id())
                .query(CountSheets::line)
                .list();
        if (sheet.size() > LINES) {
            throw new CountRefused.TooMuchForOneCount(scope, LINES);
        }
        return sheet;
    }

    /**
     * What a count is of. A count opened a moment ago may not be in the list yet, so the answer waits for it.
     *
     * @throws CountRefused.CountUnknown if nobody opened it
     */
    Place scope(CountId count) {
        Optional<Place> known = place(count);
        if (known.isEmpty() && projectors.getObject().caughtUp(PATIENCE)) {
            known = place(count);
        }
        return known.orElseThrow(() -> new CountRefused.CountUnknown(count));
    }

    private Optional<Place> place(CountId count) {
        return jdbc.sql("SELECT place FROM stock_count WHERE count_id = ?")
                .param(count.value())
                .query(String.class)
                .optional()
                .map(Place::parse);
    }

    /** What the books know of something that is perhaps not on the sheet: most of it in stock elsewhere than here. */
    SheetLine found(String holding, String id, Place scope) {
        List<SheetLine> places = new ArrayList<>(jdbc.sql((LINE + """
                         WHERE p.id = :id AND p.quantity > 0
                           AND p.place_kind IN ('depot', 'crew', 'vehicle', 'in-transit', 'set-aside')
                         ORDER BY p.quantity DESC""").formatted(holding))
                .param("id", id)
                .query(CountSheets::line)
                .list());
        places.removeIf(line -> Counting.within(scope, line.place()));
        if (!places.isEmpty()) {
            SheetLine there = places.getFirst();
            return withElsewhere(there, there.place(), there.book());
        }
        return jdbc.sql("""
                        SELECT '%1$s' AS holding, b.id, :place AS place, b.material, b.kind, 0 AS quantity, b.bought,
                               b.cost_minor, b.currency FROM %1$s_balance b WHERE b.id = :id""".formatted(holding))
                .param("place", scope.toString())
                .param("id", id)
                .query(CountSheets::line)
                .optional()
                .orElse(new SheetLine(holding, id, scope, null, null, 0, 0, 0, null, null, 0));
    }

    private static SheetLine withElsewhere(SheetLine line, Place elsewhere, long quantity) {
        return new SheetLine(
                line.holding(),
                line.id(),
                line.place(),
                line.material(),
                line.kind(),
                0,
                line.bought(),
                line.costMinor(),
                line.currency(),
                elsewhere,
                quantity);
    }

    private static SheetLine line(ResultSet row, int number) throws SQLException {
        return new SheetLine(
                row.getString("holding"),
                row.getString("id"),
                Place.parse(row.getString("place")),
                row.getString("material"),
                row.getString("kind"),
                row.getLong("quantity"),
                row.getLong("bought"),
                row.getLong("cost_minor"),
                row.getString("currency"),
                null,
                0);
    }
}

package org.bandtrail.supplystock.holdings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Writes a page of events into the tables of reels or of batches: balance, place, history and {@link KeptSums}. The page
 * is summed up first, then each table takes one statement, so that the cost of a page does not grow with its events'
 * number of statements. The tables have the same columns for both; only the unit differs.
 */
public final class HoldingTables {
    private final JdbcClient jdbc;
    private final String prefix;
    private final KeptSums kept;

    /** @param prefix {@code reel} or {@code batch} */
    public HoldingTables(JdbcClient jdbc, String prefix) {
        this.jdbc = jdbc;
        this.prefix = prefix;
        this.kept = new KeptSums(jdbc, prefix);
    }

    /** The tables, in an order in which they can be copied. */
    public List<String> names() {
        List<String> names = new ArrayList<>(List.of(prefix + "_balance", prefix + "_place", prefix + "_history"));
        names.addAll(kept.names());
        return names;
    }

    /** Adds a page; called once per page, in one transaction with the reader's position. */
    public void add(List<Line> page) {
        Map<String, Sums> sums = new TreeMap<>();
        Map<String, Map<Place, Long>> places = new TreeMap<>();
        for (Line line : page) {
            sums.computeIfAbsent(line.holding(), Sums::new).add(line);
            Map<Place, Long> deltas = places.computeIfAbsent(line.holding(), unused -> new TreeMap<>());
            for (Move move : line.entry().moves()) {
                deltas.merge(move.source(), -move.quantity(), Long::sum);
                deltas.merge(move.target(), move.quantity(), Long::sum);
            }
        }
        String[] ids = sums.keySet().toArray(String[]::new);
        String[] received =
                texts(page.stream().filter(line -> line.bought() != null).toList(), Line::holding);
        String[] late = received.length == 0 ? received : kept.unreceived(received);
        kept.balances(ids, -1);
        if (late.length > 0) {
            kept.everythingOf(late, -1);
        }
        addBalances(sums.values());
        if (late.length > 0) {
            kept.everythingOf(late, 1);
        }
        addPlaces(places);
        addHistory(page);
        kept.balances(ids, 1);
        kept.historyOfPage(page.getFirst().position(), page.getLast().position());
    }

    private void addBalances(Collection<Sums> sums) {
        jdbc.sql("""
                        INSERT INTO %1$s_balance AS b (id, received, in_depot, with_crew, on_tree, in_bag, disposed,
                            written_off, missing, set_aside, in_vehicle, in_transit, slit, bought, cost_minor,
                            charged_minor, written_off_minor, written_down_minor, slit_minor, last_holder, last_moved_at,
                            position)
                        SELECT * FROM unnest(?::varchar[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[],
                            ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[],
                            ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::bigint[], ?::varchar[],
                            ?::timestamptz[], ?::bigint[])
                        ON CONFLICT (id) DO UPDATE SET
                            received = b.received + EXCLUDED.received,
                            in_depot = b.in_depot + EXCLUDED.in_depot,
                            with_crew = b.with_crew + EXCLUDED.with_crew,
                            on_tree = b.on_tree + EXCLUDED.on_tree,
                            in_bag = b.in_bag + EXCLUDED.in_bag,
                            disposed = b.disposed + EXCLUDED.disposed,
                            written_off = b.written_off + EXCLUDED.written_off,
                            missing = b.missing + EXCLUDED.missing,
                            set_aside = b.set_aside + EXCLUDED.set_aside,
                            in_vehicle = b.in_vehicle + EXCLUDED.in_vehicle,
                            in_transit = b.in_transit + EXCLUDED.in_transit,
                            slit = b.slit + EXCLUDED.slit,
                            bought = b.bought + EXCLUDED.bought,
                            cost_minor = b.cost_minor + EXCLUDED.cost_minor,
                            charged_minor = b.charged_minor + EXCLUDED.charged_minor,
                            written_off_minor = b.written_off_minor + EXCLUDED.written_off_minor,
                            written_down_minor = b.written_down_minor + EXCLUDED.written_down_minor,
                            slit_minor = b.slit_minor + EXCLUDED.slit_minor,
                            last_holder = coalesce(EXCLUDED.last_holder, b.last_holder),
                            last_moved_at = greatest(EXCLUDED.last_moved_at, b.last_moved_at),
                            position = EXCLUDED.position""".formatted(prefix))
                .params(
                        texts(sums, sum -> sum.id),
                        numbers(sums, sum -> -sum.of(PlaceKind.SUPPLIER)),
                        numbers(sums, sum -> sum.of(PlaceKind.DEPOT)),
                        numbers(sums, sum -> sum.of(PlaceKind.CREW)),
                        numbers(sums, sum -> sum.of(PlaceKind.TREE)),
                        numbers(sums, sum -> sum.of(PlaceKind.BAG)),
                        numbers(sums, sum -> sum.of(PlaceKind.DISPOSED)),
                        numbers(sums, sum -> sum.of(PlaceKind.WRITTEN_OFF)),
                        numbers(sums, sum -> sum.of(PlaceKind.MISSING)),
                        numbers(sums, sum -> sum.of(PlaceKind.SET_ASIDE)),
                        numbers(sums, sum -> sum.of(PlaceKind.VEHICLE)),
                        numbers(sums, sum -> sum.of(PlaceKind.IN_TRANSIT)),
                        numbers(sums, sum -> sum.of(PlaceKind.SLIT)),
                        numbers(sums, sum -> sum.bought),
                        numbers(sums, sum -> sum.costMinor),
                        numbers(sums, sum -> sum.chargedMinor),
                        numbers(sums, sum -> sum.writtenOffMinor),
                        numbers(sums, sum -> sum.writtenDownMinor),
                        numbers(sums, sum -> sum.slitMinor),
                        texts(sums, sum -> sum.lastHolder),
                        texts(sums, sum -> sum.lastMoved),
                        numbers(sums, sum -> sum.position))
                .update();
        List<Line> receipts =
                sums.stream().map(sum -> sum.receipt).filter(Objects::nonNull).toList();
        if (!receipts.isEmpty()) {
            setBought(receipts);
        }
    }

    private void setBought(List<Line> receipts) {
        List<Line.Bought> bought = receipts.stream()
                .map(line -> Objects.requireNonNull(line.bought()))
                .toList();
        jdbc.sql("""
                        UPDATE %1$s_balance AS b
                        SET material = r.material, kind = r.kind, currency = r.currency, received_at = r.received_at
                        FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[], ?::timestamptz[])
                            AS r (id, material, kind, currency, received_at)
                        WHERE b.id = r.id""".formatted(prefix))
                .params(
                        texts(receipts, Line::holding),
                        texts(bought, each -> each.material().value()),
                        texts(bought, each -> each.kind().name()),
                        texts(bought, each -> each.cost().currency()),
                        texts(receipts, line -> line.happened().toString()))
                .update();
    }

    private void addPlaces(Map<String, Map<Place, Long>> places) {
        List<String> ids = new ArrayList<>();
        List<Map.Entry<Place, Long>> deltas = new ArrayList<>();
        places.forEach((id, each) -> each.entrySet().forEach(delta -> {
            ids.add(id);
            deltas.add(delta);
        }));
        jdbc.sql("""
                        INSERT INTO %1$s_place AS p (id, place_kind, place_id, quantity)
                        SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[])
                        ON CONFLICT (id, place_kind, place_id) DO UPDATE SET quantity = p.quantity + EXCLUDED.quantity""".formatted(prefix))
                .params(
                        texts(ids, id -> id),
                        texts(deltas, delta -> delta.getKey().kind().word()),
                        texts(deltas, delta -> delta.getKey().id()),
                        numbers(deltas, Map.Entry::getValue))
                .update();
        kept.places(
                texts(ids, id -> id),
                texts(deltas, delta -> delta.getKey().toString()),
                numbers(deltas, Map.Entry::getValue));
    }

    private void addHistory(List<Line> page) {
        List<HistoryRow> rows =
                page.stream().flatMap(line -> HistoryRow.of(line).stream()).toList();
        jdbc.sql("""
                        INSERT INTO %1$s_history (position, step, id, what, note, source, target, quantity, account,
                            cost_minor, by_person, happened_at, recorded_at)
                        SELECT * FROM unnest(?::bigint[], ?::bigint[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                            ?::varchar[], ?::bigint[], ?::varchar[], ?::bigint[], ?::varchar[], ?::timestamptz[],
                            ?::timestamptz[])
                        ON CONFLICT DO NOTHING""".formatted(prefix))
                .params(
                        numbers(rows, row -> row.line().position()),
                        numbers(rows, HistoryRow::step),
                        texts(rows, row -> row.line().holding()),
                        texts(rows, row -> row.line().what()),
                        texts(rows, row -> row.line().note()),
                        texts(rows, row -> row.source()),
                        texts(rows, row -> row.target()),
                        numbers(rows, HistoryRow::quantity),
                        texts(rows, HistoryRow::account),
                        numbers(rows, HistoryRow::minor),
                        texts(rows, row -> row.line().entry().by().value()),
                        texts(rows, row -> row.line().happened().toString()),
                        texts(
                                rows,
                                row -> row.line().entry().occurred().recorded().toString()))
                .update();
    }

    private static <T> String[] texts(Collection<T> rows, Function<T, String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    private static <T> Long[] numbers(Collection<T> rows, ToLongFunction<T> column) {
        return rows.stream().map(column::applyAsLong).toArray(Long[]::new);
    }
}

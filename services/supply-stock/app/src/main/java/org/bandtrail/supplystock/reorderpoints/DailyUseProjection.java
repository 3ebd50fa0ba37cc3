package org.bandtrail.supplystock.reorderpoints;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.bandtrail.supplystock.reorderpoints.DepotMoves.Holding;
import org.bandtrail.supplystock.reorderpoints.DepotMoves.Received;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Keeps the use of each day, the depots behind it and the stock of the depots: a page is summed, then written by sets.
 */
@Component
final class DailyUseProjection implements Projection {
    private final JdbcClient jdbc;

    DailyUseProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "daily-use";
    }

    @Override
    public List<String> tables() {
        return List.of("use_holding", "use_depot", "use_of_day", "use_stock");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class, BatchEvent.class);
    }

    private record Day(Holding holding, LocalDate day) {}

    private record AtDepot(Holding holding, String depot) {}

    private record DepotDay(Day day, String depot) {}

    @Override
    public void apply(List<StoredEvent> page) {
        Map<Holding, Received> received = new LinkedHashMap<>();
        Map<Day, Long> used = new LinkedHashMap<>();
        Map<DepotDay, Boolean> depots = new LinkedHashMap<>();
        Map<AtDepot, Long> stock = new LinkedHashMap<>();
        for (StoredEvent stored : page) {
            DepotMoves event = DepotMoves.of(stored.payload());
            Day day = new Day(event.holding(), event.day());
            if (event.received() != null) {
                received.put(event.holding(), event.received());
            }
            if (event.used() > 0) {
                used.merge(day, event.used(), Long::sum);
            }
            for (Move move : event.moves()) {
                addDepots(day, move, depots, stock);
            }
        }
        insertReceived(received);
        addUsed(used);
        addDepotDays(depots);
        addStock(stock);
    }

    private static void addDepots(Day day, Move move, Map<DepotDay, Boolean> depots, Map<AtDepot, Long> stock) {
        Place source = move.source();
        Place target = move.target();
        if (source.kind() == PlaceKind.DEPOT) {
            String depot = depotOf(source);
            stock.merge(new AtDepot(day.holding(), depot), -move.quantity(), Long::sum);
            depots.merge(new DepotDay(day, depot), target.kind() == PlaceKind.CREW, Boolean::logicalOr);
        }
        if (target.kind() == PlaceKind.DEPOT) {
            String depot = depotOf(target);
            stock.merge(new AtDepot(day.holding(), depot), move.quantity(), Long::sum);
            if (source.kind().isOrigin() || source.kind() == PlaceKind.SET_ASIDE || onTheWay(source)) {
                depots.merge(new DepotDay(day, depot), false, Boolean::logicalOr);
            }
        }
    }

    private static boolean onTheWay(Place place) {
        return place.kind() == PlaceKind.IN_TRANSIT || place.kind() == PlaceKind.VEHICLE;
    }

    /** Bins are part of their depot. */
    private static String depotOf(Place place) {
        return Objects.requireNonNull(place.depotId()).value();
    }

    private void insertReceived(Map<Holding, Received> received) {
        jdbc.sql("""
                INSERT INTO use_holding (holding, id, material, kind)
                SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[])
                ON CONFLICT DO NOTHING""")
                .params(
                        texts(received.keySet(), Holding::kind),
                        texts(received.keySet(), Holding::id),
                        texts(received.values(), each -> each.material().value()),
                        texts(received.values(), each -> each.kind().name()))
                .update();
    }

    private void addUsed(Map<Day, Long> used) {
        jdbc.sql("""
                INSERT INTO use_of_day AS u (holding, id, day, quantity)
                SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::date[], ?::bigint[])
                ON CONFLICT (holding, id, day) DO UPDATE SET quantity = u.quantity + EXCLUDED.quantity""")
                .params(
                        texts(used.keySet(), day -> day.holding().kind()),
                        texts(used.keySet(), day -> day.holding().id()),
                        texts(used.keySet(), day -> day.day().toString()),
                        used.values().toArray(Long[]::new))
                .update();
    }

    private void addDepotDays(Map<DepotDay, Boolean> depots) {
        jdbc.sql("""
                INSERT INTO use_depot AS d (holding, id, day, depot_id, handed_out)
                SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::date[], ?::varchar[], ?::boolean[])
                ON CONFLICT (holding, id, day, depot_id) DO UPDATE SET handed_out = d.handed_out OR EXCLUDED.handed_out""")
                .params(
                        texts(depots.keySet(), each -> each.day().holding().kind()),
                        texts(depots.keySet(), each -> each.day().holding().id()),
                        texts(depots.keySet(), each -> each.day().day().toString()),
                        texts(depots.keySet(), DepotDay::depot),
                        depots.values().toArray(Boolean[]::new))
                .update();
    }

    private void addStock(Map<AtDepot, Long> stock) {
        jdbc.sql("""
                INSERT INTO use_stock AS s (holding, id, depot_id, quantity)
                SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[])
                ON CONFLICT (holding, id, depot_id) DO UPDATE SET quantity = s.quantity + EXCLUDED.quantity""")
                .params(
                        texts(stock.keySet(), each -> each.holding().kind()),
                        texts(stock.keySet(), each -> each.holding().id()),
                        texts(stock.keySet(), AtDepot::depot),
                        stock.values().toArray(Long[]::new))
                .update();
    }

    private static <T> String[] texts(Collection<T> rows, Function<T, String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }
}

package org.bandtrail.supplystock.holds;

import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps which kit has what reserved now. Of a page only the last word about each hold is written. */
@Component
final class HoldProjection implements Projection {
    private final JdbcClient jdbc;

    HoldProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "hold";
    }

    @Override
    public List<String> tables() {
        return List.of("hold");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(HoldEvent.class);
    }

    private record Key(String held, String kit) {}

    @Override
    public void apply(List<StoredEvent> page) {
        Map<Key, HoldEvent> last = new LinkedHashMap<>();
        for (StoredEvent stored : page) {
            HoldEvent event = (HoldEvent) stored.payload();
            String kit = switch (event) {
                case HoldEvent.Placed placed -> placed.kit().value();
                case HoldEvent.Ended ended -> ended.kit().value();
            };
            last.put(new Key(event.held().value(), kit), event);
        }
        delete(last.keySet().stream().toList());
        insert(last.values().stream()
                .map(event -> event instanceof HoldEvent.Placed placed ? placed : null)
                .filter(Objects::nonNull)
                .toList());
    }

    private void delete(List<Key> keys) {
        jdbc.sql("DELETE FROM hold USING unnest(?::varchar[], ?::varchar[]) AS g (held, kit_id)"
                        + " WHERE hold.held = g.held AND hold.kit_id = g.kit_id")
                .params(
                        keys.stream().map(Key::held).toArray(String[]::new),
                        keys.stream().map(Key::kit).toArray(String[]::new))
                .update();
    }

    private void insert(List<HoldEvent.Placed> placed) {
        jdbc.sql("INSERT INTO hold (held, kit_id, quantity, until)"
                        + " SELECT * FROM unnest(?::varchar[], ?::varchar[], ?::bigint[], ?::timestamptz[])")
                .params(
                        placed.stream().map(each -> each.held().value()).toArray(String[]::new),
                        placed.stream().map(each -> each.kit().value()).toArray(String[]::new),
                        placed.stream().map(HoldEvent.Placed::quantity).toArray(Long[]::new),
                        placed.stream()
                                .map(each ->
                                        each.until().atOffset(ZoneOffset.UTC).toString())
                                .toArray(String[]::new))
                .update();
    }
}

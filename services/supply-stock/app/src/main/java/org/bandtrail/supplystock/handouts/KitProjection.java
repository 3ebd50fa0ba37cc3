package org.bandtrail.supplystock.handouts;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps who carried out what together. */
@Component
final class KitProjection implements Projection {
    private final JdbcClient jdbc;

    KitProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "kit";
    }

    @Override
    public List<String> tables() {
        return List.of("kit", "kit_line");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(KitEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((KitEvent) stored.payload()) {
                case KitEvent.HandedOut out -> insert(out);
                // What was only wished for, or signed, stands with the kits, not with the handouts.
                case KitEvent.Reserved unused -> {}
                case KitEvent.Released unused -> {}
                case KitEvent.Signed unused -> {}
            }
        }
    }

    private void insert(KitEvent.HandedOut out) {
        jdbc.sql("""
            INSERT INTO kit (kit_id, depot_id, crew_id, person_id, handed_out_at, by_person)
            VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING\
            """)
                .params(
                        out.kitId().value(),
                        out.depot().value(),
                        out.crew().value(),
                        out.person().value(),
                        out.occurred().happened().atOffset(ZoneOffset.UTC),
                        out.by().value())
                .update();
        jdbc.sql("""
            INSERT INTO kit_line (kit_id, id, material, kind, quantity)
            SELECT ?, * FROM unnest(?::varchar[], ?::varchar[], ?::varchar[], ?::bigint[])
            ON CONFLICT DO NOTHING\
            """)
                .params(
                        out.kitId().value(),
                        out.lines().stream().map(KitLine::id).toArray(String[]::new),
                        out.lines().stream()
                                .map(line -> line.material().value())
                                .toArray(String[]::new),
                        out.lines().stream().map(line -> line.kind().name()).toArray(String[]::new),
                        out.lines().stream().map(KitLine::quantity).toArray(Long[]::new))
                .update();
    }
}

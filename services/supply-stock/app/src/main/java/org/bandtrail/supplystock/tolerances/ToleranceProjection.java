package org.bandtrail.supplystock.tolerances;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every policy that ever held, in order. */
@Component
final class ToleranceProjection implements Projection {
    private final JdbcClient jdbc;

    ToleranceProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "tolerance";
    }

    @Override
    public List<String> tables() {
        return List.of("tolerance");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ToleranceEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((ToleranceEvent) stored.payload()) {
                case ToleranceEvent.ToleranceSet set -> insert(stored.position(), set);
            }
        }
    }

    private void insert(long position, ToleranceEvent.ToleranceSet set) {
        Tolerances values = set.tolerances();
        jdbc.sql("""
                        INSERT INTO tolerance (position, quantity_permille, length_mm, pieces, price_permille,
                            price_minor, second_person_from_minor, source, reason, by_person, set_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        position,
                        values.quantityPermille(),
                        values.lengthMm(),
                        values.pieces(),
                        values.pricePermille(),
                        values.priceMinor(),
                        values.secondPersonFromMinor(),
                        set.source(),
                        set.reason(),
                        set.by().value(),
                        set.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}

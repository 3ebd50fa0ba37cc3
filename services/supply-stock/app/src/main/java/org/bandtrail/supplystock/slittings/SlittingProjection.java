package org.bandtrail.supplystock.slittings;

import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps what was slit into what. Costs are those of the reels, so they follow when the wide reel's cost changes. */
@Component
final class SlittingProjection implements Projection {
    private final JdbcClient jdbc;

    SlittingProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "slitting";
    }

    @Override
    public List<String> tables() {
        return List.of("slitting", "slitting_strip");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(SlittingEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((SlittingEvent) stored.payload()) {
                case SlittingEvent.Slit slit -> insert(slit);
            }
        }
    }

    private void insert(SlittingEvent.Slit slit) {
        jdbc.sql("""
                        INSERT INTO slitting (slitting_id, reel_id, material, length_mm, width_mm, trim_mm, slit_at, by_person)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        slit.slittingId().value(),
                        slit.reelId().value(),
                        slit.material().value(),
                        slit.length().mm(),
                        slit.width().mm(),
                        slit.trim().mm(),
                        slit.occurred().happened().atOffset(ZoneOffset.UTC),
                        slit.by().value())
                .update();
        List<Strip> strips = slit.strips();
        jdbc.sql("""
                        INSERT INTO slitting_strip (slitting_id, strip, reel_id, material, width_mm)
                        SELECT ?, * FROM unnest(?::int[], ?::varchar[], ?::varchar[], ?::bigint[]) ON CONFLICT DO NOTHING""")
                .params(
                        slit.slittingId().value(),
                        IntStream.rangeClosed(1, strips.size()).boxed().toArray(Integer[]::new),
                        strips.stream().map(strip -> strip.reelId().value()).toArray(String[]::new),
                        strips.stream().map(strip -> strip.material().value()).toArray(String[]::new),
                        strips.stream().map(strip -> strip.width().mm()).toArray(Long[]::new))
                .update();
    }
}

package org.bandtrail.siteinstalls.bands;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.bands.BandEvent.BandFitted;
import org.bandtrail.siteinstalls.bands.BandEvent.BandTakenDown;
import org.bandtrail.siteinstalls.bands.BandEvent.PiecesReplaced;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every band as it stands, its history and its flags, a page at a time. */
@Component
final class BandProjection implements Projection {
    private final JdbcClient jdbc;
    private final BandTable table;

    BandProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.table = new BandTable(jdbc);
    }

    /** One line of the history. */
    private record Step(long position, BandEvent event, String what, PersonId by, String note) {}

    /** One flag. */
    private record Flagged(long position, int ordinal, BandId bandId, Finding finding) {}

    @Override
    public String name() {
        return "band";
    }

    @Override
    public List<String> tables() {
        return List.of("band", "band_step", "band_flag");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(BandEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        List<Step> steps = new ArrayList<>();
        List<Flagged> flags = new ArrayList<>();
        Map<BandId, BandRow> rows = table.read(page.stream()
                .map(stored -> ((BandEvent) stored.payload()).bandId())
                .distinct()
                .toList());
        for (StoredEvent stored : page) {
            BandEvent event = (BandEvent) stored.payload();
            rows.merge(event.bandId(), BandRow.NONE.after(event), (known, first) -> known.after(event));
            steps.add(step(stored.position(), event));
            if (event instanceof BandFitted fitted) {
                for (int ordinal = 0; ordinal < fitted.findings().size(); ordinal++) {
                    flags.add(new Flagged(
                            stored.position(),
                            ordinal,
                            fitted.bandId(),
                            fitted.findings().get(ordinal)));
                }
            }
        }
        table.write(rows.values());
        insertSteps(steps);
        insertFlags(flags);
    }

    private static Step step(long position, BandEvent event) {
        return switch (event) {
            case BandFitted fitted ->
                new Step(
                        position,
                        event,
                        "fitted",
                        fitted.by(),
                        "tree %s, %s"
                                .formatted(
                                        fitted.treeId(),
                                        Material.words(fitted.tape(), fitted.mesh(), fitted.fasteners())));
            case PiecesReplaced replaced ->
                new Step(
                        position,
                        event,
                        "pieces replaced",
                        replaced.by(),
                        "visit %s, %s"
                                .formatted(
                                        replaced.visitId(),
                                        Material.words(replaced.tape(), replaced.mesh(), replaced.fasteners())));
            case BandTakenDown down ->
                new Step(position, event, "taken down", down.by(), "teardown " + down.teardownId());
        };
    }

    private void insertSteps(List<Step> steps) {
        jdbc.sql("""
                        INSERT INTO band_step (position, band_id, what, happened_at, recorded_at, by_person, note)
                        SELECT * FROM unnest(?::bigint[], ?::text[], ?::text[], ?::timestamptz[], ?::timestamptz[],
                                             ?::text[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        steps.stream().map(Step::position).toArray(Long[]::new),
                        texts(steps, step -> step.event().bandId().value()),
                        texts(steps, Step::what),
                        texts(
                                steps,
                                step -> step.event()
                                        .when()
                                        .happened()
                                        .atOffset(ZoneOffset.UTC)
                                        .toString()),
                        texts(
                                steps,
                                step -> step.event()
                                        .when()
                                        .recorded()
                                        .atOffset(ZoneOffset.UTC)
                                        .toString()),
                        texts(steps, step -> step.by().value()),
                        texts(steps, Step::note))
                .update();
    }

    private void insertFlags(List<Flagged> flags) {
        jdbc.sql("""
                        INSERT INTO band_flag (position, ordinal, band_id, flag, field, message)
                        SELECT * FROM unnest(?::bigint[], ?::integer[], ?::text[], ?::text[], ?::text[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        flags.stream().map(Flagged::position).toArray(Long[]::new),
                        flags.stream().map(Flagged::ordinal).toArray(Integer[]::new),
                        texts(flags, flag -> flag.bandId().value()),
                        texts(flags, flag -> flag.finding().code()),
                        texts(flags, flag -> flag.finding().field()),
                        texts(flags, flag -> flag.finding().message()))
                .update();
    }

    private static <T> String[] texts(List<T> rows, Function<T, String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }
}

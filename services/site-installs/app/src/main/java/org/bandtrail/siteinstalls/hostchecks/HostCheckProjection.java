package org.bandtrail.siteinstalls.hostchecks;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.siteinstalls.hostchecks.HostCheckEvent.HostCheckMade;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every host check, a page at a time. */
@Component
final class HostCheckProjection implements Projection {
    private final JdbcClient jdbc;

    HostCheckProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "host-check";
    }

    @Override
    public List<String> tables() {
        return List.of("host_check");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(HostCheckEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        List<HostCheckMade> checks =
                page.stream().map(stored -> (HostCheckMade) stored.payload()).toList();
        jdbc.sql("""
                        INSERT INTO host_check (position, tree_id, pest, key_version, outcome, species_code,
                                                confidence_percent, answers, by_person, happened_at, recorded_at)
                        SELECT * FROM unnest(?::bigint[], ?::text[], ?::text[], ?::integer[], ?::text[], ?::text[],
                                             ?::integer[], ?::text[], ?::text[], ?::timestamptz[], ?::timestamptz[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        page.stream().map(StoredEvent::position).toArray(Long[]::new),
                        texts(checks, check -> check.treeId().value()),
                        texts(checks, check -> check.pest().value()),
                        checks.stream().map(HostCheckMade::keyVersion).toArray(Integer[]::new),
                        texts(checks, check -> check.verdict().outcome().name()),
                        checks.stream().map(HostCheckProjection::species).toArray(String[]::new),
                        checks.stream()
                                .map(check -> check.verdict().confidencePercent())
                                .toArray(Integer[]::new),
                        texts(checks, HostCheckProjection::answers),
                        texts(checks, check -> check.by().value()),
                        texts(checks, check -> moment(check.when().happened())),
                        texts(checks, check -> moment(check.when().recorded())))
                .update();
    }

    private static @Nullable String species(HostCheckMade check) {
        EppoCode species = check.verdict().species();
        return species == null ? null : species.value();
    }

    private static String answers(HostCheckMade check) {
        return check.answers().stream()
                .map(answer -> answer.question() + "=" + answer.answer())
                .collect(Collectors.joining(" "));
    }

    private static String[] texts(List<HostCheckMade> checks, Function<HostCheckMade, String> value) {
        return checks.stream().map(value).toArray(String[]::new);
    }

    private static String moment(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC).toString();
    }
}

package org.bandtrail.supplystock.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every sample in the publishers' jars becomes exactly the moves it names. */
@OnPostgres
class FieldFactsTest {
    @Autowired
    List<ReceivedHandler> handlers;

    @Autowired
    Work work;

    @Autowired
    Projectors projectors;

    @Autowired
    JdbcClient jdbc;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "site-installs.band-fitted.v1.1",
                "site-installs.band-fitted.v1.2",
                "inspections.pieces-replaced.v1.1",
                "inspections.band-taken-down.v1.1",
                "inspections.load-disposed.v1.1"
            })
    void a_sample_becomes_the_moves_it_names(String sample) {
        JsonNode data = read("/samples/" + sample + ".json");
        String type = sample.substring(0, sample.lastIndexOf('.'));
        String source = "/bandtrail/" + type.substring(0, type.indexOf('.'));
        ReceivedHandler handler = handlers.stream()
                .filter(each -> each.source().equals(source) && each.handles(type))
                .findFirst()
                .orElseThrow();
        long before = moved();

        work.inOneTransaction(() -> {
            handler.handle(new Envelope(
                    UUID.randomUUID().toString(),
                    source,
                    type,
                    "band/B-1",
                    Instant.parse("2026-05-04T08:00:00Z"),
                    data));
            return type;
        });

        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
        long told = 0;
        for (JsonNode move : data.path("moves")) {
            told += move.path("quantity").asLong();
        }
        assertThat(told).isPositive();
        assertThat(moved() - before).isEqualTo(told);
    }

    private long moved() {
        return jdbc.sql("SELECT coalesce((SELECT sum(quantity) FROM reel_history), 0)"
                        + " + coalesce((SELECT sum(quantity) FROM batch_history), 0)")
                .query(Long.class)
                .single();
    }

    private static JsonNode read(String name) {
        try (@Nullable InputStream file = FieldFactsTest.class.getResourceAsStream(name)) {
            assertThat(file).as(name).isNotNull();
            return JsonMapper.shared().readTree(file);
        } catch (IOException unreadable) {
            throw new IllegalStateException(name, unreadable);
        }
    }
}

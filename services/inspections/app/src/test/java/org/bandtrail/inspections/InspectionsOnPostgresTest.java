package org.bandtrail.inspections;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.Bands;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

@OnPostgres
class InspectionsOnPostgresTest {
    @LocalServerPort
    int port;

    @Autowired
    Work work;

    @Autowired
    Bands bands;

    @Autowired
    Projectors projectors;

    @Autowired
    JdbcClient jdbc;

    private FieldDay day;

    @BeforeEach
    void begin() {
        day = new FieldDay(new Door(port), work, bands, projectors);
    }

    private List<String> outbox(String subject) {
        return jdbc.sql("SELECT data::text FROM outbox WHERE subject = ? ORDER BY position")
                .param(subject)
                .query(String.class)
                .list();
    }

    @Test
    void a_visit_with_a_renewal_is_seen_on_the_band_and_told_to_the_others() {
        day.fit("B-10", "R-10", 1200);

        Door.Answer answer = day.door()
                .post(
                        "/visits",
                        FieldDay.visit(
                                UUID.randomUUID(),
                                "V-10",
                                "B-10",
                                ",\"saturationPercent\":95,\"catches\":{\"adult\":61},\"guard\":\"sound\""
                                        + FieldDay.renewal("R-11", "BAG-10")));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body().path("flags").toString()).contains("catch-is-lower-bound", "recorded-late");
        JsonNode band = day.band("B-10").path("band");
        assertThat(band.path("tapeReelId").asString()).isEqualTo("R-11");
        assertThat(band.path("tapeMm").asLong()).isEqualTo(1210);
        assertThat(band.path("catchTotal").asLong()).isEqualTo(61);
        assertThat(band.path("catchIsLowerBound").asBoolean()).isTrue();
        assertThat(band.path("whyDue").asString()).isEqualTo("interval");
        assertThat(outbox("band/B-10")).hasSize(2);
        assertThat(outbox("band/B-10").getLast())
                .contains("\"quantity\":1200,\"source\":\"tree:T-1\",\"target\":\"bag:BAG-10\"")
                .contains("\"quantity\":1210,\"source\":\"crew:P-07\",\"target\":\"tree:T-1\"");
    }

    @Test
    void the_same_command_twice_is_one_visit_and_other_content_under_its_id_is_refused() {
        UUID command = UUID.randomUUID();
        String body = FieldDay.visit(command, "V-20", "B-20", "");

        assertThat(day.door().post("/visits", body)).isEqualTo(day.door().post("/visits", body));
        Door.Answer other = day.door().post("/visits", FieldDay.visit(command, "V-21", "B-20", ""));

        assertThat(other.status()).isEqualTo(422);
        assertThat(other.body().path("type").asString()).isEqualTo("/problems/command-reused");
        assertThat(day.band("B-20").path("visits").size()).isEqualTo(1);
    }

    @Test
    void the_fitting_heard_after_the_visit_publishes_the_moves_that_were_missing() {
        day.door()
                .post("/visits", FieldDay.visit(UUID.randomUUID(), "V-30", "B-30", FieldDay.renewal("R-31", "BAG-30")));
        assertThat(outbox("band/B-30").getLast()).contains("\"moves\":[]");

        day.fit("B-30", "R-30", 1200);

        assertThat(outbox("band/B-30").getLast())
                .contains("\"settlesEarlier\":true", "\"visitId\":\"V-30\"", "bag:BAG-30", "R-31");
        assertThat(day.band("B-30").path("band").path("tapeMm").asLong()).isEqualTo(1210);
    }

    @Test
    void a_band_taken_down_fills_a_bag_that_leaves_with_a_load() {
        day.fit("B-40", "R-40", 1200);
        day.door().post("/teardowns", """
                {"commandId":"%s","teardownId":"TD-40","bandId":"B-40","personId":"P-07","bagId":"BAG-40",
                 "mesh":"reuse","fasteners":"bag","happenedAt":"2026-05-09T08:00:00Z"}""".formatted(UUID.randomUUID()));
        Door.Answer load = day.door().post("/loads", """
                {"commandId":"%s","loadId":"L-40","bagIds":["BAG-40","BAG-41"],"carrier":"CARRIER-2",
                 "happenedAt":"2026-05-10T08:00:00Z"}""".formatted(UUID.randomUUID()));

        assertThat(load.body().path("bags").toString()).contains("bag-not-known-yet");
        assertThat(outbox("bag/BAG-40").getLast()).contains("\"target\":\"disposed:L-40\"", "1200");
        assertThat(day.band("B-40").path("band").path("state").asString()).isEqualTo("down");
        assertThat(day.door()
                        .get("/bags?after=BAG-3Z&limit=1")
                        .body()
                        .path("rows")
                        .get(0)
                        .toString())
                .contains("\"bagId\":\"BAG-40\"", "\"state\":\"gone\"", "\"loadId\":\"L-40\"");
        assertThat(day.door().get("/loads").body().path("rows").toString()).contains("\"tapeMm\":1200");
    }

    @Test
    void a_sync_keeps_what_it_can_and_can_be_sent_again() {
        List<String> records = IntStream.range(0, 500)
                .mapToObj(i ->
                        FieldDay.visit(UUID.randomUUID(), "V-6" + i, "B-6" + i, FieldDay.renewal("R-60", "BAG-60")))
                .collect(Collectors.toList());
        records.add(FieldDay.visit(UUID.randomUUID(), "V-69999", "B-69999", ",\"guard\":\"wobbly\""));
        records.add(records.getFirst());
        records.add("{\"visitId\":\"V-69998\",\"bandId\":\"B-69998\"}");
        String body = "{\"records\":[%s]}".formatted(String.join(",", records));

        long start = System.nanoTime();
        Door.Answer answer = day.door().post("/visits/sync", body);
        System.out.printf("sync of %d records: %d ms%n", records.size(), (System.nanoTime() - start) / 1_000_000);

        JsonNode results = answer.body().path("results");
        assertThat(results.size()).isEqualTo(503);
        assertThat(results.get(499).path("accepted").asBoolean()).isTrue();
        assertThat(results.get(500).path("accepted").asBoolean()).isFalse();
        assertThat(results.get(500).path("problem").asString()).contains("wobbly", "sound, touching, gap, missing");
        assertThat(results.get(501)).isEqualTo(results.get(0));
        assertThat(results.get(502).path("problem").asString()).contains("commandId");
        assertThat(day.door().post("/visits/sync", body)).isEqualTo(answer);
        assertThat(jdbc.sql("SELECT count(*) FROM outbox WHERE subject LIKE 'band/B-6%'")
                        .query(Long.class)
                        .single())
                .isEqualTo(1000);
    }

    @Test
    void an_unreadable_word_is_a_problem_that_names_it() {
        Door.Answer answer = day.door()
                .post("/visits", FieldDay.visit(UUID.randomUUID(), "V-80", "B-80", ",\"catches\":{\"larva\":3}"));

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body().path("detail").asString()).contains("larva", "instar-1");
    }

    @Test
    void a_field_that_is_missing_is_a_problem_that_names_it() {
        Door.Answer answer = day.door().post("/teardowns", "{\"teardownId\":\"TD-9\"}");

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body().path("detail").asString()).contains("commandId");
    }
}

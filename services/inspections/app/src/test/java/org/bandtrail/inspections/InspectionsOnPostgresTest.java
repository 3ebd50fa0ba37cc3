package org.bandtrail.inspections;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.BandCommand.HearOfFitting;
import org.bandtrail.inspections.bands.BandSamples;
import org.bandtrail.inspections.bands.Bands;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
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

    private Door door;

    @BeforeEach
    void openDoor() {
        door = new Door(port);
    }

    private void fit(String band, String reel, long mm) {
        work.inOneTransaction(() -> bands.tell(new HearOfFitting(
                new BandId(band),
                "FIT-" + band,
                BandSamples.TRUNK,
                BandSamples.DOER,
                List.of(Portion.tape(new ReelId(reel), Length.ofMm(mm))),
                BandSamples.onDay(1))));
    }

    private static String visit(UUID command, String visit, String band, String more) {
        return """
                {"commandId":"%s","visitId":"%s","bandId":"%s","personId":"P-07","crewId":"C-1","answer":"read",
                 "happenedAt":"2026-05-04T08:00:00Z"%s}""".formatted(command, visit, band, more);
    }

    private static String renewal(String reel, String bag) {
        return ",\"replace\":{\"tape\":{\"reelId\":\"%s\",\"length\":\"1210 mm\"},\"bagId\":\"%s\"}"
                .formatted(reel, bag);
    }

    private JsonNode band(String band) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return door.get("/bands/" + band).body();
    }

    private List<String> outbox(String subject) {
        return jdbc.sql("SELECT data::text FROM outbox WHERE subject = ? ORDER BY position")
                .param(subject)
                .query(String.class)
                .list();
    }

    @Test
    void a_visit_with_a_renewal_is_seen_on_the_band_and_told_to_the_others() {
        fit("B-10", "R-10", 1200);

        Door.Answer answer = door.post(
                "/visits",
                visit(
                        UUID.randomUUID(),
                        "V-10",
                        "B-10",
                        ",\"saturationPercent\":95,\"catches\":{\"adult\":61},\"guard\":\"sound\""
                                + renewal("R-11", "BAG-10")));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body().path("flags").toString()).contains("catch-is-lower-bound", "recorded-late");
        JsonNode band = band("B-10").path("band");
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
        String body = visit(command, "V-20", "B-20", "");

        assertThat(door.post("/visits", body)).isEqualTo(door.post("/visits", body));
        Door.Answer other = door.post("/visits", visit(command, "V-21", "B-20", ""));

        assertThat(other.status()).isEqualTo(422);
        assertThat(other.body().path("type").asString()).isEqualTo("/problems/command-reused");
        assertThat(band("B-20").path("visits").size()).isEqualTo(1);
    }

    @Test
    void the_fitting_heard_after_the_visit_publishes_the_moves_that_were_missing() {
        door.post("/visits", visit(UUID.randomUUID(), "V-30", "B-30", renewal("R-31", "BAG-30")));
        assertThat(outbox("band/B-30").getLast()).contains("\"moves\":[]");

        fit("B-30", "R-30", 1200);

        assertThat(outbox("band/B-30").getLast())
                .contains("\"settlesEarlier\":true", "\"visitId\":\"V-30\"", "bag:BAG-30", "R-31");
        assertThat(band("B-30").path("band").path("tapeMm").asLong()).isEqualTo(1210);
    }

    @Test
    void a_band_taken_down_fills_a_bag_that_leaves_with_a_load() {
        fit("B-40", "R-40", 1200);
        door.post("/teardowns", """
                {"commandId":"%s","teardownId":"TD-40","bandId":"B-40","personId":"P-07","bagId":"BAG-40",
                 "mesh":"reuse","fasteners":"bag","happenedAt":"2026-05-09T08:00:00Z"}""".formatted(UUID.randomUUID()));
        Door.Answer load = door.post("/loads", """
                {"commandId":"%s","loadId":"L-40","bagIds":["BAG-40","BAG-41"],"carrier":"CARRIER-2",
                 "happenedAt":"2026-05-10T08:00:00Z"}""".formatted(UUID.randomUUID()));

        assertThat(load.body().path("bags").toString()).contains("bag-not-known-yet");
        assertThat(outbox("bag/BAG-40").getLast()).contains("\"target\":\"disposed:L-40\"", "1200");
        assertThat(band("B-40").path("band").path("state").asString()).isEqualTo("down");
        assertThat(door.get("/bags?after=BAG-3Z&limit=1")
                        .body()
                        .path("rows")
                        .get(0)
                        .toString())
                .contains("\"bagId\":\"BAG-40\"", "\"state\":\"gone\"", "\"loadId\":\"L-40\"");
        assertThat(door.get("/loads").body().path("rows").toString()).contains("\"tapeMm\":1200");
    }

    @Test
    void an_animal_makes_the_band_due_until_its_outcome_is_told() {
        fit("B-50", "R-50", 1200);
        door.post("/visits", visit(UUID.randomUUID(), "V-50", "B-50", """
                ,"guard":"gap","bycatch":{"seen":true,"animal":"small woodpecker","alive":true,"action":"boxed",
                 "handedTo":"REHAB-12","supervisorTold":true}"""));
        assertThat(band("B-50").path("band").path("whyDue").asString()).isEqualTo("bycatch");
        assertThat(door.get("/bycatch?open=true").body().toString()).contains("woodpecker", "Do not pull");

        Door.Answer told = door.post("/bycatch/V-50/outcome", """
                {"commandId":"%s","outcome":"released",
                 "happenedAt":"2026-05-06T08:00:00Z"}""".formatted(UUID.randomUUID()));

        assertThat(told.status()).isEqualTo(200);
        assertThat(band("B-50").path("band").path("whyDue").asString()).isEqualTo("guard");
        assertThat(door.get("/bycatch?open=false").body().toString()).contains("released");
    }

    @Test
    void a_sync_keeps_what_it_can_and_can_be_sent_again() {
        List<String> records = IntStream.range(0, 500)
                .mapToObj(i -> visit(UUID.randomUUID(), "V-6" + i, "B-6" + i, renewal("R-60", "BAG-60")))
                .collect(Collectors.toList());
        records.add(visit(UUID.randomUUID(), "V-69999", "B-69999", ",\"guard\":\"wobbly\""));
        records.add(records.getFirst());
        records.add("{\"visitId\":\"V-69998\",\"bandId\":\"B-69998\"}");
        String body = "{\"records\":[%s]}".formatted(String.join(",", records));

        long start = System.nanoTime();
        Door.Answer answer = door.post("/visits/sync", body);
        System.out.printf("sync of %d records: %d ms%n", records.size(), (System.nanoTime() - start) / 1_000_000);

        JsonNode results = answer.body().path("results");
        assertThat(results.size()).isEqualTo(503);
        assertThat(results.get(499).path("accepted").asBoolean()).isTrue();
        assertThat(results.get(500).path("accepted").asBoolean()).isFalse();
        assertThat(results.get(500).path("problem").asString()).contains("wobbly", "sound, touching, gap, missing");
        assertThat(results.get(501)).isEqualTo(results.get(0));
        assertThat(results.get(502).path("problem").asString()).contains("commandId");
        assertThat(door.post("/visits/sync", body)).isEqualTo(answer);
        assertThat(jdbc.sql("SELECT count(*) FROM outbox WHERE subject LIKE 'band/B-6%'")
                        .query(Long.class)
                        .single())
                .isEqualTo(1000);
    }

    @Test
    void due_bands_come_soonest_first_and_page_by_page() {
        fit("B-70", "R-70", 1200);
        fit("B-71", "R-70", 1200);
        fit("B-72", "R-70", 1200);
        door.post("/visits", visit(UUID.randomUUID(), "V-71", "B-71", ",\"saturationPercent\":10"));
        band("B-71");

        JsonNode first = door.get("/bands?site=S-1&due=2026-05-05&limit=1").body();
        String next = URLEncoder.encode(first.path("next").asString(), StandardCharsets.UTF_8);
        JsonNode second =
                door.get("/bands?site=S-1&due=2026-05-05&limit=1&after=" + next).body();

        assertThat(first.path("rows").get(0).path("dueAt").asString())
                .isLessThanOrEqualTo(second.path("rows").get(0).path("dueAt").asString());
        assertThat(first.path("rows").get(0).path("bandId"))
                .isNotEqualTo(second.path("rows").get(0).path("bandId"));
        assertThat(door.get("/bands?site=S-1&due=2026-05-05&limit=2000").body().toString())
                .contains("\"B-70\"")
                .doesNotContain("\"B-71\"");
    }

    @Test
    void an_unreadable_word_is_a_problem_that_names_it() {
        Door.Answer answer =
                door.post("/visits", visit(UUID.randomUUID(), "V-80", "B-80", ",\"catches\":{\"larva\":3}"));

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body().path("detail").asString()).contains("larva", "instar-1");
    }

    @Test
    void a_field_that_is_missing_is_a_problem_that_names_it() {
        Door.Answer answer = door.post("/teardowns", "{\"commandId\":\"%s\"}".formatted(UUID.randomUUID()));

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body().path("detail").asString()).contains("bandId");
    }

    @Test
    void a_new_policy_changes_when_a_band_is_due_and_keeps_the_old_version() {
        int before = door.get("/policies/visits").body().path("rows").size();
        Door.Answer adopted = door.post("/policies/visits", """
                {"commandId":"%s","validFrom":"2999-01-01","intervalDays":1,"loadFromPercent":40,"loadIntervalDays":1,
                 "fullFromPercent":80,"guardIntervalDays":0,"retryIntervalDays":1,"maxDaysUp":90,"lateAfterHours":48,
                 "source":"wildlife advice","reason":"nesting time"}""".formatted(UUID.randomUUID()));

        assertThat(adopted.body().path("version").asInt()).isEqualTo(before + 1);
        assertThat(door.get("/policies/visits").body().path("inForce").asInt()).isEqualTo(1);
    }

    @Test
    void catch_rates_count_only_what_was_read() {
        fit("B-90", "R-90", 1200);
        door.post(
                "/visits",
                visit(UUID.randomUUID(), "V-90", "B-90", ",\"catches\":{\"instar-1\":12}")
                        .replace("2026-05-04T", "2026-05-06T"));
        band("B-90");

        JsonNode rate = door.get("/catch-rates?from=2026-05-06&to=2026-05-06").body();

        assertThat(rate.path("insects").asLong()).isEqualTo(12);
        assertThat(rate.path("bandHours").asLong()).isEqualTo(96);
        assertThat(rate.path("perBandDayMilli").asLong()).isEqualTo(3000);
    }

    @Test
    void rebuilt_rows_are_the_same_as_the_old_ones() {
        fit("B-95", "R-95", 1200);
        String more = ",\"saturationPercent\":60" + renewal("R-96", "BAG-95");
        door.post("/visits", visit(UUID.randomUUID(), "V-95", "B-95", more));
        JsonNode band = band("B-95");
        JsonNode bags = door.get("/bags").body();

        projectors.rebuild("bands");
        projectors.rebuild("bags");

        assertThat(door.get("/bands/B-95").body()).isEqualTo(band);
        assertThat(door.get("/bags").body()).isEqualTo(bags);
    }
}

package org.bandtrail.inspections;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.Bands;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@OnPostgres
class ReadingsOnPostgresTest {
    @LocalServerPort
    int port;

    @Autowired
    Work work;

    @Autowired
    Bands bands;

    @Autowired
    Projectors projectors;

    private FieldDay day;

    @BeforeEach
    void begin() {
        day = new FieldDay(new Door(port), work, bands, projectors);
    }

    @Test
    void an_animal_makes_the_band_due_until_its_outcome_is_told() {
        day.fit("B-50", "R-50", 1200);
        day.door().post("/visits", FieldDay.visit(UUID.randomUUID(), "V-50", "B-50", """
                ,"guard":"gap","bycatch":{"seen":true,"animal":"small woodpecker","alive":true,"action":"boxed",
                 "handedTo":"REHAB-12","supervisorTold":true}"""));
        assertThat(day.band("B-50").path("band").path("whyDue").asString()).isEqualTo("bycatch");
        assertThat(day.door().get("/bycatch?open=true").body().toString()).contains("woodpecker", "Do not pull");

        Door.Answer told = day.door().post("/bycatch/V-50/outcome", """
                {"commandId":"%s","outcome":"released",
                 "happenedAt":"2026-05-06T08:00:00Z"}""".formatted(UUID.randomUUID()));

        assertThat(told.status()).isEqualTo(200);
        assertThat(day.band("B-50").path("band").path("whyDue").asString()).isEqualTo("guard");
        assertThat(day.door().get("/bycatch?open=false").body().toString()).contains("released");
    }

    @Test
    void due_bands_come_soonest_first_and_page_by_page() {
        day.fit("B-70", "R-70", 1200);
        day.fit("B-71", "R-70", 1200);
        day.fit("B-72", "R-70", 1200);
        day.door().post("/visits", FieldDay.visit(UUID.randomUUID(), "V-71", "B-71", ",\"saturationPercent\":10"));
        day.band("B-71");

        JsonNode first =
                day.door().get("/bands?site=S-1&due=2026-05-05&limit=1").body();
        String next = URLEncoder.encode(first.path("next").asString(), StandardCharsets.UTF_8);
        JsonNode second = day.door()
                .get("/bands?site=S-1&due=2026-05-05&limit=1&after=" + next)
                .body();

        assertThat(first.path("rows").get(0).path("dueAt").asString())
                .isLessThanOrEqualTo(second.path("rows").get(0).path("dueAt").asString());
        assertThat(first.path("rows").get(0).path("bandId"))
                .isNotEqualTo(second.path("rows").get(0).path("bandId"));
        assertThat(day.door()
                        .get("/bands?site=S-1&due=2026-05-05&limit=2000")
                        .body()
                        .toString())
                .contains("\"B-70\"")
                .doesNotContain("\"B-71\"");
    }

    @Test
    void a_new_policy_changes_when_a_band_is_due_and_keeps_the_old_version() {
        int before = day.door().get("/policies/visits").body().path("rows").size();
        Door.Answer adopted = day.door().post("/policies/visits", """
                {"commandId":"%s","validFrom":"2999-01-01","intervalDays":1,"loadFromPercent":40,"loadIntervalDays":1,
                 "fullFromPercent":80,"guardIntervalDays":0,"retryIntervalDays":1,"maxDaysUp":90,"lateAfterHours":48,
                 "source":"wildlife advice","reason":"nesting time"}""".formatted(UUID.randomUUID()));

        assertThat(adopted.body().path("version").asInt()).isEqualTo(before + 1);
        assertThat(day.door().get("/policies/visits").body().path("inForce").asInt())
                .isEqualTo(1);
    }

    @Test
    void catch_rates_count_only_what_was_read() {
        day.fit("B-90", "R-90", 1200);
        day.door()
                .post(
                        "/visits",
                        FieldDay.visit(UUID.randomUUID(), "V-90", "B-90", ",\"catches\":{\"instar-1\":12}")
                                .replace("2026-05-04T", "2026-05-06T"));
        day.band("B-90");

        JsonNode rate =
                day.door().get("/catch-rates?from=2026-05-06&to=2026-05-06").body();

        assertThat(rate.path("insects").asLong()).isEqualTo(12);
        assertThat(rate.path("bandHours").asLong()).isEqualTo(96);
        assertThat(rate.path("perBandDayMilli").asLong()).isEqualTo(3000);
    }

    @Test
    void rebuilt_rows_are_the_same_as_the_old_ones() {
        day.fit("B-95", "R-95", 1200);
        String more = ",\"saturationPercent\":60" + FieldDay.renewal("R-96", "BAG-95");
        day.door().post("/visits", FieldDay.visit(UUID.randomUUID(), "V-95", "B-95", more));
        JsonNode band = day.band("B-95");
        JsonNode bags = day.door().get("/bags").body();

        projectors.rebuild("bands");
        projectors.rebuild("bags");

        assertThat(day.door().get("/bands/B-95").body()).isEqualTo(band);
        assertThat(day.door().get("/bags").body()).isEqualTo(bags);
    }
}

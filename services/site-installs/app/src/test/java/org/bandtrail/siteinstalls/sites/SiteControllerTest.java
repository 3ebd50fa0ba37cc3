package org.bandtrail.siteinstalls.sites;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@OnPostgres
class SiteControllerTest {
    private final Http http;
    private final Projectors projectors;

    @Autowired
    SiteControllerTest(@LocalServerPort int port, Projectors projectors) {
        this.http = new Http(port);
        this.projectors = projectors;
    }

    private Http.Answer register(String site, String more) {
        return http.post(
                "/sites",
                "{\"commandId\":\"%s\",\"siteId\":\"%s\",\"name\":\"Alder brook\"%s}"
                        .formatted(Http.commandId(), site, more));
    }

    @Test
    void a_site_is_listed_with_its_point_its_trees_and_its_bands() {
        assertThat(register("A-SITE", ",\"lat\":40.1234567,\"lon\":-75.5,\"accessNotes\":\"by the gate\"")
                        .status())
                .isEqualTo(200);
        http.post("/trees", "{\"commandId\":\"%s\",\"siteId\":\"A-SITE\",\"tag\":\"1\"}".formatted(Http.commandId()));
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode site =
                http.get("/sites?after=A-SITD&limit=1").body().path("rows").path(0);
        assertThat(site.path("siteId").asString()).isEqualTo("A-SITE");
        assertThat(site.path("lat").decimalValue()).isEqualByComparingTo("40.1234567");
        assertThat(site.path("lon").decimalValue()).isEqualByComparingTo("-75.5");
        assertThat(site.path("trees").asInt()).isOne();
        assertThat(site.path("bandsUp").asInt()).isZero();
    }

    @Test
    void half_a_point_is_not_understood_and_a_taken_identity_is_refused() {
        assertThat(register("B-SITE", ",\"lat\":40.1").status()).isEqualTo(400);
        assertThat(register("B-SITE", "").status()).isEqualTo(200);
        Http.Answer refused = register("B-SITE", "");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.body().path("type").asString()).isEqualTo("/problems/site-already-registered");
    }

    private Http.Answer change(String site, String what, String more) {
        return http.post(
                "/sites/%s/%s".formatted(site, what), "{\"commandId\":\"%s\",%s}".formatted(Http.commandId(), more));
    }

    private static final String WITH_THE_CLOCK = """
            {"type":"Polygon","coordinates":[[[-75.34,40.44],[-75.34,40.441],[-75.339,40.441],[-75.339,40.44],[-75.34,40.44]]]}
            """;

    @Test
    void a_site_tells_its_ground_its_hours_its_hazards_and_what_they_were_before() {
        register("C-SITE", "");
        Http.Answer drawn = change("C-SITE", "boundary", "\"boundary\":" + WITH_THE_CLOCK);
        assertThat(drawn.body().path("notes").path(0).asString()).contains("turned");
        change(
                "C-SITE",
                "hours",
                "\"hours\":{\"weekly\":[{\"day\":\"MONDAY\",\"from\":\"08:00\",\"until\":\"16:00\"}],\"exceptions\":[]}");
        change("C-SITE", "hazards", "\"hazards\":[{\"kind\":\"ticks\",\"note\":\"hedge\"}]");
        change("C-SITE", "correct", "\"name\":\"Alder weir\"");
        change("C-SITE", "close", "\"on\":\"2026-09-01\",\"reason\":\"sold\"");
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode whole = http.get("/sites/C-SITE").body();
        // GeographicLib PolygonArea of this square: 9,421.1872 square metres, 391.7714 m (check values, F6)
        assertThat(whole.path("areaDm2").asLong()).isEqualTo(942_119);
        assertThat(whole.path("perimeterMm").asLong()).isEqualTo(391_771);
        assertThat(whole.path("hazards").path(0).path("kind").path("caution").asString())
                .contains("sleeves");
        assertThat(whole.path("closedOn").asString()).isEqualTo("2026-09-01");
        assertThat(whole.path("history")
                        .valueStream()
                        .map(step -> step.path("what").asString()))
                .containsExactly("closed", "corrected", "hazards set", "opening hours set", "boundary drawn");
        assertThat(whole.path("history").path(1).path("was").asString()).contains("Alder brook");
        assertThat(http.get("/sites/C-SITE/open?at=2026-06-01T15:59")
                        .body()
                        .path("open")
                        .asBoolean())
                .isTrue();
        assertThat(http.get("/sites/C-SITE/open?at=2026-06-02T10:00")
                        .body()
                        .path("why")
                        .asString())
                .isEqualTo("Closed on Tuesday.");
        projectors.rebuild("site");
        assertThat(http.get("/sites/C-SITE").body()).isEqualTo(whole);
    }

    @Test
    void sites_come_out_as_geojson_with_the_outside_against_the_clock() {
        register("D-SITE", ",\"boundary\":" + WITH_THE_CLOCK);
        register("E-SITE", ",\"lat\":40.1,\"lon\":-75.5");
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode features = http.get("/sites.geojson").body().path("features");
        JsonNode ground = of(features, "D-SITE");
        assertThat(ground.path("geometry").path("type").asString()).isEqualTo("Polygon");
        JsonNode ring = ground.path("geometry").path("coordinates").path(0);
        assertThat(ring.path(1).path(0).asDouble()).isEqualTo(-75.339);
        assertThat(of(features, "E-SITE")
                        .path("geometry")
                        .path("coordinates")
                        .path(0)
                        .asDouble())
                .isEqualTo(-75.5);
    }

    private static JsonNode of(JsonNode features, String id) {
        return features.valueStream()
                .filter(feature -> feature.path("id").asString().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void an_unknown_hazard_and_a_crossing_boundary_are_named() {
        register("F-SITE", "");
        assertThat(change("F-SITE", "hazards", "\"hazards\":[{\"kind\":\"dragons\",\"note\":\"\"}]")
                        .body()
                        .path("detail")
                        .asString())
                .contains("dragons")
                .contains("roadside");
        Http.Answer crossing = change("F-SITE", "boundary", """
                "boundary":{"type":"Polygon","coordinates":[[[0,0],[0.01,0.01],[0.01,0],[0,0.01],[0,0]]]}""");
        assertThat(crossing.status()).isEqualTo(400);
        assertThat(crossing.body().path("detail").asString()).contains("crosses another");
        assertThat(change("NO-SITE", "close", "\"on\":\"2026-09-01\",\"reason\":\"x\"")
                        .status())
                .isEqualTo(409);
        assertThat(http.get("/sites/NO-SITE").status()).isEqualTo(404);
    }
}

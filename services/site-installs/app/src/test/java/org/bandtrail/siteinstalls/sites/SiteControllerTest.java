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
}

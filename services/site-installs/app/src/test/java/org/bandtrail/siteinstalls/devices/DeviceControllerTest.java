package org.bandtrail.siteinstalls.devices;

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
class DeviceControllerTest {
    private final Http http;
    private final Projectors projectors;

    @Autowired
    DeviceControllerTest(@LocalServerPort int port, Projectors projectors) {
        this.http = new Http(port);
        this.projectors = projectors;
    }

    @Test
    void the_kinds_are_listed_and_their_pieces_calculated() {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        assertThat(http.get("/devices").body().path("rows").path(0).path("code").asString())
                .isEqualTo("sticky-band");
        JsonNode screen = http.get("/devices/screen-band/pieces?girth=4 ft&on=2026-05-01")
                .body()
                .path("pieces")
                .path(1);
        // By hand: 4 ft = 1219 mm, 1.5 times 1828.5, up to 1830.
        assertThat(screen.path("lengthMm").asInt()).isEqualTo(1830);
        assertThat(screen.path("part").path("material").asString()).isEqualTo("mesh");
        assertThat(http.get("/devices/kite/pieces?girth=1 m").status()).isEqualTo(404);
    }

    @Test
    void a_fitted_device_is_stored_and_one_that_nobody_described_is_flagged() {
        Http.Answer stored = http.post("/bands", """
                {"commandId":"%s","bandId":"DV-1","treeId":"ELM-9","siteId":"ELM","crewId":"C-1","personId":"P-07",
                 "girth":"1000 mm","tape":{"reelId":"R-9","length":"1100 mm"},"device":"kite","position":2,
                 "pest":"cheibr","alsoCounted":[{"batchId":"F-9","pieces":1}],
                 "happenedAt":"2026-05-04T12:00:00Z"}""".formatted(Http.commandId()));
        assertThat(stored.status()).isEqualTo(200);
        assertThat(stored.body()
                        .path("flags")
                        .valueStream()
                        .map(flag -> flag.path("flag").asString()))
                .contains("device-unknown");
    }
}

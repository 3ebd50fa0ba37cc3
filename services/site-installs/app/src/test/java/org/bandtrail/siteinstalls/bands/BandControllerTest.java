package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.knownreels.KnownReels;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

@OnPostgres
class BandControllerTest {
    private final Http http;
    private final Projectors projectors;
    private final KnownReels reels;
    private final JdbcClient jdbc;

    @Autowired
    BandControllerTest(@LocalServerPort int port, Projectors projectors, KnownReels reels, JdbcClient jdbc) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.reels = reels;
        this.jdbc = jdbc;
    }

    @BeforeEach
    void aSiteTwoTreesAndTwoReels() {
        http.post("/sites", """
                {"commandId":"019a0000-0000-7000-8000-0000000000a1","siteId":"ELM","name":"Elm lane"}""");
        for (int tag = 1; tag <= 6; tag++) {
            http.post("/trees", """
                    {"commandId":"019a0000-0000-7000-8000-0000000000b%d","siteId":"ELM",
                     "tag":"%d","girth":"1230 mm"}""".formatted(tag, tag));
        }
        reels.remember(
                new KnownReel(new ReelId("R-1"), new MaterialCode("TAPE"), MaterialKind.TAPE, Length.ofMm(100), null));
        reels.remember(new KnownReel(
                new ReelId("M-1"), new MaterialCode("MESH"), MaterialKind.MESH, Length.ofMm(300), Length.ofMm(13)));
    }

    private static String body(String commandId, String band, String tree, String girth) {
        return """
                {"commandId":"%s","bandId":"%s","treeId":"%s","siteId":"ELM","crewId":"C-1","personId":"P-07",
                 "girth":"%s","height":"4 ft","tape":{"reelId":"R-1","length":"1325 mm"},
                 "mesh":{"reelId":"M-1","length":"1465 mm"},"fasteners":{"batchId":"F-1","pieces":9},
                 "happenedAt":"%s"}""".formatted(
                        commandId, band, tree, girth, java.time.Instant.now().minusSeconds(3600));
    }

    private JsonNode band(String bandId) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return http.get("/bands/" + bandId).body();
    }

    @Test
    void a_band_that_agrees_with_the_books_is_stored_and_told() {
        Http.Answer answer = http.post("/bands", body(Http.commandId(), "EB-1", "ELM-1", "1234 mm"));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body().path("bandId").asString()).isEqualTo("EB-1");
        assertThat(answer.body().path("flags")).isEmpty();

        JsonNode band = band("EB-1");
        assertThat(band.path("state").asString()).isEqualTo("up");
        assertThat(band.path("tapeMm").asLong()).isEqualTo(1325);
        assertThat(band.path("heightMm").asLong()).isEqualTo(1219);
        assertThat(band.path("history")).hasSize(1);
        assertThat(jdbc.sql("SELECT count(*) FROM outbox WHERE subject = 'band/EB-1'")
                        .query(Long.class)
                        .single())
                .isOne();
    }

    @Test
    void a_girth_measured_while_fitting_enters_the_history_of_the_tree_and_the_newest_still_counts() {
        // The tree was registered with 1230 mm after this band was fitted, so 1230 mm stays the newest.
        http.post("/bands", body(Http.commandId(), "EB-9", "ELM-6", "1236 mm"));
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode tree = http.get("/trees/ELM-6").body();
        assertThat(tree.path("girthMm").asLong()).isEqualTo(1230);
        JsonNode measured = tree.path("history")
                .valueStream()
                .filter(step -> step.path("bandId").asString("").equals("EB-9"))
                .findFirst()
                .orElseThrow();
        assertThat(measured.path("girthMm").asLong()).isEqualTo(1236);
        assertThat(measured.path("girthHeightMm").asLong()).isEqualTo(1219);
        assertThat(measured.path("what").asString()).isEqualTo("girth measured while fitting");
    }

    @Test
    void the_same_command_twice_stores_once_and_answers_the_same() {
        String request = body(Http.commandId(), "EB-2", "ELM-2", "1234 mm");
        assertThat(http.post("/bands", request)).isEqualTo(http.post("/bands", request));
        assertThat(band("EB-2").path("history")).hasSize(1);
    }

    @Test
    void a_contradiction_is_stored_and_flagged() {
        http.post("/bands", body(Http.commandId(), "EB-3", "ELM-3", "1234 mm"));
        Http.Answer second = http.post("/bands", body(Http.commandId(), "EB-3B", "ELM-3", "1234 mm"));
        assertThat(second.status()).isEqualTo(200);
        assertThat(second.body().path("flags").path(0).path("flag").asString()).isEqualTo("tree-already-banded");
        assertThat(band("EB-3B").path("flags").path(0).path("message").asString())
                .contains("EB-3");
    }

    @Test
    void a_check_asks_and_stores_nothing() {
        Http.Answer answer = http.post("/bands/check", body(Http.commandId(), "EB-4", "ELM-4", "78 ft"));
        assertThat(answer.status()).isEqualTo(200);
        JsonNode question = answer.body().path("questions").path(0);
        assertThat(question.path("field").asString()).isEqualTo("girth");
        assertThat(question.path("value").asString()).isEqualTo("78 ft");
        assertThat(http.get("/bands/EB-4").status()).isEqualTo(404);
    }

    @Test
    void a_delivery_is_answered_record_by_record_and_a_bad_record_holds_up_nobody() {
        String good = body(Http.commandId(), "EB-5", "ELM-5", "1234 mm");
        String sameTree = body(Http.commandId(), "EB-6", "ELM-5", "1234 mm");
        String bad = body(Http.commandId(), "EB-7", "ELM-6", "thick");
        String delivery = "{\"records\":[%s,%s,%s,%s]}".formatted(good, sameTree, bad, good);

        Http.Answer answer = http.post("/bands/sync", delivery);

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body().path("stored").asInt()).as("%s", answer.body()).isEqualTo(3);
        JsonNode results = answer.body().path("results");
        assertThat(results.path(0).path("problem").isNull()).isTrue();
        assertThat(results.path(1).path("flags").path(0).path("flag").asString())
                .isEqualTo("tree-already-banded");
        assertThat(results.path(2).path("problem").asString()).contains("[thick]");
        assertThat(results.path(3)).isEqualTo(results.path(0));
        assertThat(http.post("/bands/sync", delivery)).isEqualTo(answer);
        assertThat(band("EB-5").path("history")).hasSize(1);
        assertThat(http.get("/bands/EB-7").status()).isEqualTo(404);
    }

    @Test
    void a_field_that_is_missing_is_named() {
        Http.Answer answer = http.post("/bands", "{\"commandId\":\"" + Http.commandId() + "\",\"bandId\":\"EB-8\"}");
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body().path("detail").asString()).contains("treeId");
    }
}

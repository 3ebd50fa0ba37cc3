package org.bandtrail.siteinstalls.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The life of a piece of mesh: off a tree, looked at, on another tree, off again, into a bag. */
@OnPostgres
class MeshPieceFactsTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Instant DAY = Instant.parse("2026-05-04T12:00:00Z");
    private final Http http;
    private final Projectors projectors;
    private final KnownReels reels;
    private final FromInspections from;
    private final Work work;

    @Autowired
    MeshPieceFactsTest(
            @LocalServerPort int port, Projectors projectors, KnownReels reels, FromInspections from, Work work) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.reels = reels;
        this.from = from;
        this.work = work;
    }

    @BeforeEach
    void two_reels_are_known() {
        reels.remember(new KnownReel(
                new ReelId("MPT-1"), new MaterialCode("TAPE"), MaterialKind.TAPE, Length.ofMm(100), null));
        reels.remember(new KnownReel(
                new ReelId("MPM-1"), new MaterialCode("MESH"), MaterialKind.MESH, Length.ofMm(300), Length.ofMm(13)));
    }

    private void takenDown(String teardown, String band, String tree, String meshTo, int day) {
        Instant happened = DAY.plus(Duration.ofDays(day));
        String told = """
                {"teardownId":"%s","bandId":"%s","treeId":"%s","siteId":"MP-SITE","crewId":"C-1","personId":"P-07",
                 "bagId":"BAG-1","settlesEarlier":false,"moves":[
                   {"material":"reel","id":"MPT-1","quantity":1325,"source":"tree:%s","target":"bag:BAG-1"},
                   {"material":"reel","id":"MPM-1","quantity":1465,"source":"tree:%s","target":"%s"},
                   {"material":"batch","id":"F-1","quantity":9,"source":"tree:%s","target":"crew:P-07"}],
                 "happenedAt":"%s","recordedAt":"%s","by":"P-07"}""".formatted(teardown, band, tree, tree, tree, meshTo, tree, happened, happened);
        work.inOneTransaction(() -> {
            from.handle(new Envelope(
                    "E-" + teardown,
                    "/bandtrail/inspections",
                    "inspections.band-taken-down.v1",
                    "band/" + band,
                    happened,
                    JSON.readTree(told)));
            return 1;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
    }

    private Http.Answer fit(String band, String tree, String piece, int day) {
        Http.Answer answer =
                http.post("/bands", """
                {"commandId":"%s","bandId":"%s","treeId":"%s","siteId":"MP-SITE","crewId":"C-1","personId":"P-07",
                 "girth":"1234 mm","tape":{"reelId":"MPT-1","length":"1325 mm"},
                 "mesh":{"reelId":"MPM-1","length":"1465 mm"},"meshPiece":"%s","happenedAt":"%s"}""".formatted(Http.commandId(), band, tree, piece, DAY.plus(Duration.ofDays(day))));
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return answer;
    }

    private JsonNode found(String band) {
        JsonNode rows = http.get("/mesh-pieces?q=" + band).body().path("rows");
        return rows.path(0);
    }

    @Test
    void mesh_keeps_its_identity_from_tree_to_tree_and_ends_as_scrap() {
        takenDown("MP-TD-1", "MPB-1", "MP-TREE-1", "crew:P-07", 0);
        JsonNode all = http.get("/mesh-pieces?place=crew:P-07&state=free&q=MPM-1")
                .body()
                .path("rows");
        assertThat(all).hasSize(1);
        String piece = all.path(0).path("pieceId").asString();
        assertThat(all.path(0).path("lengthMm").asLong()).isEqualTo(1465);
        assertThat(all.path(0).path("openingMm").asLong()).isEqualTo(13);

        takenDown("MP-TD-1", "MPB-1", "MP-TREE-1", "crew:P-07", 0);
        assertThat(http.get("/mesh-pieces?place=crew:P-07&q=MPM-1").body().path("rows"))
                .as("heard twice")
                .hasSize(1);

        http.post("/mesh-pieces/" + piece + "/grade", """
                {"commandId":"%s","wear":"worn","note":"one edge bent","happenedAt":"2026-05-05T08:00:00Z"}""".formatted(Http.commandId()));
        assertThat(fit("MPB-2", "MP-TREE-2", piece, 2).body().path("flags").toString())
                .doesNotContain("mesh-piece");
        JsonNode hanging = found("MPB-2");
        assertThat(hanging.path("pieceId").asString()).isEqualTo(piece);
        assertThat(hanging.path("wear").asString()).isEqualTo("worn");
        assertThat(hanging.path("place").isNull()).isTrue();
        assertThat(hanging.path("timesFitted").asLong()).isOne();
        assertThat(fit("MPB-3", "MP-TREE-3", piece, 3).body().path("flags").toString())
                .contains("mesh-piece-in-use");

        takenDown("MP-TD-3", "MPB-3", "MP-TREE-3", "crew:P-07", 9);
        assertThat(http.get("/mesh-pieces?place=crew:P-07&q=MPM-1").body().path("rows"))
                .hasSize(1);
        fit("MPB-4", "MP-TREE-4", piece, 10);
        takenDown("MP-TD-4", "MPB-4", "MP-TREE-4", "bag:BAG-1", 20);
        JsonNode whole = http.get("/mesh-pieces/" + piece).body();
        assertThat(whole.path("wear").asString()).isEqualTo("scrap");
        assertThat(whole.path("place").asString()).isEqualTo("bag:BAG-1");
        assertThat(whole.path("history").path(0).path("note").asString()).contains("bag:BAG-1");
        assertThat(fit("MPB-5", "MP-TREE-5", piece, 21).body().path("flags").toString())
                .contains("mesh-piece-scrap");
    }

    @Test
    void a_piece_nobody_told_of_is_flagged_and_becomes_known() {
        assertThat(fit("MPB-9", "MP-TREE-9", "MP-TAGGED", 1)
                        .body()
                        .path("flags")
                        .toString())
                .contains("mesh-piece-unknown");
        assertThat(found("MPB-9").path("pieceId").asString()).isEqualTo("MP-TAGGED");
    }

    @Test
    void a_piece_that_was_found_is_written_down_and_graded_and_an_unknown_one_is_refused() {
        Http.Answer kept = http.post("/mesh-pieces", """
                {"commandId":"%s","pieceId":"mp-shed","reelId":"MPM-1","length":"4 ft","wear":"good",
                 "place":"depot:RIVER"}""".formatted(Http.commandId()));
        assertThat(kept.body().path("pieceId").asString()).isEqualTo("MP-SHED");
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode shed = http.get("/mesh-pieces/MP-SHED").body();
        assertThat(shed.path("lengthMm").asLong()).isEqualTo(1219);
        assertThat(shed.path("wear").asString()).isEqualTo("good");
        assertThat(shed.path("history")).hasSize(2);

        Http.Answer unknown = http.post("/mesh-pieces/MP-NONE/put", """
                {"commandId":"%s","place":"depot:RIVER"}""".formatted(Http.commandId()));
        assertThat(unknown.status()).isEqualTo(409);
        assertThat(unknown.body().path("detail").asString()).contains("[MP-NONE]");
    }
}

package org.bandtrail.siteinstalls.duplicates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@OnPostgres
class DuplicatesOnPostgresTest {
    private final Http http;
    private final Projectors projectors;

    @Autowired
    DuplicatesOnPostgresTest(@LocalServerPort int port, Projectors projectors) {
        this.http = new Http(port);
        this.projectors = projectors;
    }

    private void register(String site, String id, String tag, String more) {
        assertThat(http.post(
                                "/trees",
                                "{\"commandId\":\"%s\",\"treeId\":\"%s\",\"siteId\":\"%s\",\"tag\":\"%s\"%s}"
                                        .formatted(Http.commandId(), id, site, tag, more))
                        .status())
                .isEqualTo(200);
    }

    private static String at(String lat, String lon, String girth) {
        return ",\"lat\":%s,\"lon\":%s%s".formatted(lat, lon, girth.isEmpty() ? "" : ",\"girth\":\"" + girth + "\"");
    }

    private JsonNode rows(String site) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return http.get("/tree-duplicates?site=" + site).body().path("rows");
    }

    private List<String> pairs(String site) {
        return rows(site)
                .valueStream()
                .map(row -> row.path("first").path("treeId").asString() + " "
                        + row.path("second").path("treeId").asString())
                .toList();
    }

    private Http.Answer decide(String what, String one, String other) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        String body = what.equals("merge")
                ? "{\"commandId\":\"%s\",\"kept\":\"%s\",\"merged\":\"%s\",\"reason\":\"looked\"}"
                : "{\"commandId\":\"%s\",\"first\":\"%s\",\"second\":\"%s\",\"reason\":\"looked\"}";
        return http.post("/tree-duplicates/" + what, body.formatted(Http.commandId(), one, other));
    }

    @Test
    void tags_that_differ_only_in_spelling_are_one_tag_at_one_site() {
        register("ELM", "E-1", "A-0017", "");
        register("ELM", "E-2", "a 17", "");
        register("ELM", "E-3", "A-170", "");
        register("ELM", "E-4", "--", "");
        register("ELM", "E-5", " - -", "");
        register("YEW", "E-6", "A17", "");

        assertThat(pairs("ELM")).containsExactly("E-1 E-2");
        JsonNode pair = rows("ELM").path(0);
        assertThat(pair.path("sameTag").asBoolean()).isTrue();
        assertThat(pair.path("distanceMm").isNull()).isTrue();
    }

    @Test
    void close_trees_are_a_pair_when_their_girths_agree_or_one_was_never_measured() {
        // 1e-5 degrees of latitude are 1.11 m, of longitude at 40 N .854 m (check values F6)
        register("FIR", "F-1", "1", at("40.00000", "-75.00000", "1000 mm"));
        register("FIR", "F-2", "2", at("40.00002", "-75.00001", "1100 mm"));
        register("FIR", "F-3", "3", at("40.00000", "-74.99997", "1250 mm"));
        register("FIR", "F-4", "4", at("39.99998", "-75.00000", ""));
        register("FIR", "F-5", "5", at("40.00100", "-75.00000", "1000 mm"));

        // F-2 is 2.380 m away; 100 of 1100 mm is under a tenth. F-3 is thicker by a fifth. F-2 to F-4: 4.5 m
        assertThat(pairs("FIR")).containsExactly("F-1 F-2", "F-1 F-4");
        JsonNode pair = rows("FIR").path(0);
        assertThat(pair.path("sameTag").asBoolean()).isFalse();
        assertThat(pair.path("distanceMm").asLong()).isBetween(2_370L, 2_395L);
        assertThat(pair.path("girthDifferenceMm").asLong()).isEqualTo(100);
    }

    @Test
    void pairs_on_both_sides_of_the_date_line_and_of_cells_are_found() {
        register("DATE", "D-1", "1", at("-16.8", "179.99999", ""));
        register("DATE", "D-2", "2", at("-16.8", "-179.99999", ""));
        register("DATE", "D-3", "3", at("0.00001", "0.000005", ""));
        register("DATE", "D-4", "4", at("-0.00001", "-0.000005", ""));
        register("DATE", "D-5", "5", at("69.5", "18.9", ""));
        register("DATE", "D-6", "6", at("69.5", "18.90007", ""));

        assertThat(pairs("DATE")).containsExactly("D-1 D-2", "D-3 D-4", "D-5 D-6");
    }

    @Test
    void a_tree_merged_away_shows_at_the_kept_one_with_all_that_is_told_of_it_later() {
        register("BOX", "B-1", "1", at("41.0", "-75.0", "1000 mm"));
        register("BOX", "B-2", "01", at("41.0", "-75.0", ""));
        assertThat(decide("merge", "B-1", "B-2").status()).isEqualTo(200);
        assertThat(pairs("BOX")).isEmpty();

        http.post(
                "/trees/B-2/girths",
                "{\"commandId\":\"%s\",\"girth\":\"1050 mm\",\"happenedAt\":\"2099-06-01T08:00:00Z\"}"
                        .formatted(Http.commandId()));
        assertThat(http.post("/bands", """
                {"commandId":"%s","bandId":"BB-2","treeId":"B-2","siteId":"BOX","crewId":"C-1","personId":"P-07",
                 "tape":{"reelId":"HR-1","length":"1325 mm"},"happenedAt":"2026-04-05T08:00:00Z"}""".formatted(Http.commandId())).status())
                .isEqualTo(200);
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode kept = http.get("/trees/B-1").body();
        assertThat(kept.path("girthMm").asLong()).isEqualTo(1050);
        assertThat(kept.path("bandsUp").asLong()).isOne();
        assertThat(kept.path("bands").path(0).path("treeId").asString()).isEqualTo("B-2");
        assertThat(kept.path("merged").path(0).path("treeId").asString()).isEqualTo("B-2");
        JsonNode late = kept.path("history").path(0);
        assertThat(late.path("treeId").asString()).isEqualTo("B-2");
        assertThat(late.path("afterMerge").asBoolean()).isTrue();
        assertThat(http.get("/trees/B-2").body().path("mergedInto").asString()).isEqualTo("B-1");
        JsonNode band = http.get("/bands/BB-2").body();
        assertThat(band.path("treeId").asString()).isEqualTo("B-2");
        assertThat(band.path("flags")
                        .valueStream()
                        .map(flag -> flag.path("flag").asString()))
                .contains("tree-merged");
        assertThat(http.get("/bands?tree=B-1").body().path("rows")).hasSize(1);
        http.post("/host-checks", """
                {"commandId":"%s","treeId":"B-2","pest":"LYCMDE","answers":[{"question":"leaf","answer":"single"}]}""".formatted(Http.commandId()));
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        assertThat(http.get("/host-checks?tree=B-1").body().path("rows")).hasSize(1);
        assertThat(http.get("/host-checks/findings?tree=B-1")
                        .body()
                        .path("rows")
                        .path(0)
                        .path("finding")
                        .asString())
                .isEqualTo("no-host");
        assertThat(http.post("/cut-plans", """
                {"commandId":"%s","depotId":"RIVER","day":"2026-05-01","trees":[{"treeId":"B-2","bands":1}],
                 "tape":"TAPE-127"}""".formatted(Http.commandId()))
                        .body()
                        .path("detail")
                        .asString())
                .contains("same tree as [B-1]");
        assertThat(http.get("/trees?site=BOX&only=STANDING").body().path("rows"))
                .hasSize(1);
        projectors.rebuild("tree");
        assertThat(http.get("/trees/B-1").body()).isEqualTo(kept);

        assertThat(decide("undo", "B-1", "B-2").status()).isEqualTo(200);
        assertThat(pairs("BOX")).containsExactly("B-1 B-2");
        JsonNode alone = http.get("/trees/B-1").body();
        assertThat(alone.path("girthMm").asLong()).isEqualTo(1000);
        assertThat(alone.path("bands")).isEmpty();
        assertThat(http.get("/trees/B-2").body().path("girthMm").asLong()).isEqualTo(1050);
    }

    @Test
    void a_pair_that_is_not_the_same_does_not_come_again_until_that_is_taken_back() {
        register("ASH", "A-1", "7", "");
        register("ASH", "A-2", "07", "");
        assertThat(decide("apart", "A-2", "A-1").status()).isEqualTo(200);
        assertThat(pairs("ASH")).isEmpty();
        JsonNode decided =
                http.get("/tree-duplicates/decisions").body().path("rows").path(0);
        assertThat(decided.path("first").asString()).isEqualTo("A-1");
        assertThat(decided.path("kept").isNull()).isTrue();
        assertThat(decide("undo", "A-1", "A-2").status()).isEqualTo(200);
        assertThat(pairs("ASH")).containsExactly("A-1 A-2");
        assertThat(decide("undo", "A-1", "A-2").body().path("detail").asString())
                .contains("nothing to take back");
    }

    @Test
    void no_tree_is_merged_in_a_ring_or_away_from_those_it_stands_for() {
        for (String id : List.of("R-1", "R-2", "R-3")) {
            register("ROWAN", id, "tag " + id, "");
        }
        decide("merge", "R-1", "R-2");

        assertThat(decide("merge", "R-2", "R-1").body().path("detail").asString())
                .contains("Keep [R-1]");
        assertThat(decide("merge", "R-2", "R-3").body().path("detail").asString())
                .contains("Keep [R-1]");
        assertThat(decide("merge", "R-3", "R-1").body().path("detail").asString())
                .contains("Keep [R-1]");
        assertThat(decide("merge", "R-3", "R-2").body().path("detail").asString())
                .contains("merged into [R-1]");
        assertThat(decide("apart", "R-1", "R-2").status()).isEqualTo(409);
        assertThat(decide("merge", "R-1", "R-1").status()).isEqualTo(409);
        assertThat(decide("merge", "R-1", "R-404").body().path("detail").asString())
                .contains("not in the register");
        assertThat(decide("merge", "R-1", "R-3").status()).isEqualTo(200);
    }
}

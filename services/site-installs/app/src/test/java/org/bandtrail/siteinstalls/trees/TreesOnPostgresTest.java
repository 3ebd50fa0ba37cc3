package org.bandtrail.siteinstalls.trees;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@OnPostgres
class TreesOnPostgresTest {
    private final Http http;
    private final Projectors projectors;
    private final Trees trees;

    @Autowired
    TreesOnPostgresTest(@LocalServerPort int port, Projectors projectors, Trees trees) {
        this.http = new Http(port);
        this.projectors = projectors;
        this.trees = trees;
    }

    private Http.Answer register(String tag, String more) {
        return http.post(
                "/trees",
                "{\"commandId\":\"%s\",\"siteId\":\"OAK\",\"tag\":\"%s\",\"happenedAt\":\"2026-04-01T08:00:00Z\"%s}"
                        .formatted(Http.commandId(), tag, more));
    }

    private Http.Answer measure(String tree, String girth, String moment) {
        return http.post(
                "/trees/%s/girths".formatted(tree),
                "{\"commandId\":\"%s\",\"girth\":\"%s\",\"happenedAt\":\"%s\"}"
                        .formatted(Http.commandId(), girth, moment));
    }

    private JsonNode tree(String treeId) {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return http.get("/trees/" + treeId).body();
    }

    @Test
    void every_measurement_is_kept_and_the_last_one_measured_counts() {
        assertThat(register("1", ",\"dbh\":\"39 cm\",\"species\":\"AILAL\"").status())
                .isEqualTo(200);
        measure("OAK-1", "4 ft 1 in", "2026-06-01T08:00:00Z");
        measure("OAK-1", "1230 mm", "2026-05-01T08:00:00Z");

        JsonNode tree = tree("OAK-1");
        // 49 in x 25.4 = 1244.6 mm
        assertThat(tree.path("girthMm").asLong()).isEqualTo(1245);
        assertThat(tree.path("girthMeasuredAt").asString()).isEqualTo("2026-06-01T08:00:00Z");
        assertThat(tree.path("history")
                        .valueStream()
                        .map(step -> step.path("note").asString()))
                .containsExactly("4 ft 1 in girth", "1230 mm girth", "39 cm diameter", "tag 1");
    }

    @Test
    void a_taken_tag_is_refused_with_a_problem_that_says_what_to_do() {
        register("2", "");
        Http.Answer refused = register("2", "");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.body().path("type").asString()).isEqualTo("/problems/tree-already-registered");
        assertThat(refused.body().path("detail").asString()).contains("OAK-2").contains("Measure it there");
    }

    @Test
    void position_code_and_height_are_kept_with_the_tree_and_half_a_position_is_not_understood() {
        String more = ",\"speciesCode\":\"ailal\",\"lat\":40.44,\"lon\":-75.3398,\"girth\":\"800 mm\","
                + "\"girthHeight\":\"4 ft 6 in\",\"note\":\"two stems\"";
        assertThat(register("7", more).status()).isEqualTo(200);
        JsonNode tree = tree("OAK-7");
        assertThat(tree.path("speciesCode").asString()).isEqualTo("AILAL");
        assertThat(tree.path("lat").decimalValue()).isEqualByComparingTo("40.44");
        assertThat(tree.path("lon").decimalValue()).isEqualByComparingTo("-75.3398");
        // 54 in x 25.4 = 1371.6 mm
        assertThat(tree.path("girthHeightMm").asLong()).isEqualTo(1372);
        assertThat(tree.path("note").asString()).isEqualTo("two stems");
        measure("OAK-7", "810 mm", "2026-06-01T08:00:00Z");
        assertThat(tree("OAK-7").path("girthHeightMm").isNull()).isTrue();

        assertThat(register("8", ",\"lat\":40.44").body().path("detail").asString())
                .contains("Give both or neither");
        assertThat(register("8", ",\"speciesCode\":\"tree\"").status()).isEqualTo(400);
    }

    @Test
    void a_correction_keeps_the_old_value_in_sight_and_a_felled_tree_leaves_the_list_of_standing_ones() {
        register("9", ",\"species\":\"sumac\"");
        Http.Answer corrected = http.post(
                "/trees/OAK-9/corrections",
                "{\"commandId\":\"%s\",\"siteId\":\"OAK\",\"tag\":\"9\",\"species\":\"heaven\",\"reason\":\"smelt it\"}"
                        .formatted(Http.commandId()));
        assertThat(corrected.status()).isEqualTo(200);
        Http.Answer gone = http.post(
                "/trees/OAK-9/gone",
                "{\"commandId\":\"%s\",\"how\":\"FELLED\",\"reason\":\"road works\"}".formatted(Http.commandId()));
        assertThat(gone.status()).isEqualTo(200);

        JsonNode tree = tree("OAK-9");
        assertThat(tree.path("species").asString()).isEqualTo("heaven");
        assertThat(tree.path("goneHow").asString()).isEqualTo("felled");
        assertThat(tree.path("history").path(1).path("note").asString())
                .isEqualTo("species sumac, now heaven; because: smelt it");
        assertThat(http.get("/trees?site=OAK&only=GONE").body().path("rows")).hasSize(1);
        assertThat(http.get("/trees?site=OAK&only=STANDING&q=OAK-9").body().path("rows"))
                .isEmpty();

        http.post("/trees/OAK-9/found-again", "{\"commandId\":\"%s\"}".formatted(Http.commandId()));
        assertThat(tree("OAK-9").path("goneAt").isNull()).isTrue();
        assertThat(http.post("/trees/OAK-9/found-again", "{\"commandId\":\"%s\"}".formatted(Http.commandId()))
                        .body()
                        .path("type")
                        .asString())
                .isEqualTo("/problems/tree-not-gone");
    }

    @Test
    void girth_and_diameter_together_are_not_understood() {
        assertThat(register("3", ",\"girth\":\"1 m\",\"dbh\":\"30 cm\"").status())
                .isEqualTo(400);
        assertThat(measure("OAK-404", "1 m", "2026-06-01T08:00:00Z").status()).isEqualTo(409);
        assertThat(http.get("/trees/OAK-404").status()).isEqualTo(404);
    }

    @Test
    void lists_go_page_by_page_and_find_by_text() {
        for (int tag = 50; tag < 55; tag++) {
            register(Integer.toString(tag), ",\"species\":\"50%_odd\"");
        }
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        JsonNode first = http.get("/trees?site=OAK&q=odd&limit=3").body();
        assertThat(first.path("rows")).hasSize(3);
        JsonNode second = http.get("/trees?site=OAK&q=odd&limit=3&after="
                        + first.path("next").asString())
                .body();
        assertThat(second.path("rows")).hasSize(2);
        assertThat(second.path("next").isNull()).isTrue();
        assertThat(http.get("/trees?site=OAK&q=0%_od").body().path("rows")).hasSize(5);
        assertThat(http.get("/trees?site=OAK&q=5_%").body().path("rows")).isEmpty();
    }

    @Test
    void a_rebuilt_register_is_the_same_as_the_old_one() {
        register("6", ",\"girth\":\"900 mm\"");
        measure("OAK-6", "910 mm", Instant.parse("2026-07-01T08:00:00Z").toString());
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        List<TreeView> before = trees.page(TreeChoice.ALL, "OAK", null, null, 100);
        TreeView.Whole one = trees.whole(new TreeId("OAK-6")).orElseThrow();

        projectors.rebuild("tree");

        assertThat(trees.page(TreeChoice.ALL, "OAK", null, null, 100)).isEqualTo(before);
        assertThat(trees.whole(new TreeId("OAK-6"))).contains(one);
    }
}

package org.bandtrail.siteinstalls.cutplans;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.stream.StreamSupport;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

/** From girths and reels to a plan that binds its reels, over HTTP. */
@OnPostgres
class CutPlansOverHttpTest {
    private static int round;
    private final Projectors projectors;
    private final JdbcClient jdbc;
    private final Http http;
    private String site = "";

    @Autowired
    CutPlansOverHttpTest(Projectors projectors, JdbcClient jdbc, @LocalServerPort int port) {
        this.projectors = projectors;
        this.jdbc = jdbc;
        this.http = new Http(port);
    }

    @BeforeEach
    void site_with_three_trees_whose_owner_allows_bands() {
        site = "CUT-" + ++round;
        done("/sites", "\"siteId\": \"%s\", \"name\": \"Alder bank\"".formatted(site));
        tree("1", "1000 mm");
        tree("2", "1200 mm");
        tree("3", "800 mm");
        done("/consents/give", """
                "siteId": "%s", "activities": ["BANDS"], "from": "2026-01-01", "how": "letter",
                "contact": {"name": "Imke Vossbarg", "phone": "555 0100"}""".formatted(site));
        seen();
    }

    // By the house's first policy: tape = girth + 50 + 2 x 19, up to the next 5 mm; by hand 1090, 1290, 890 mm.
    @Test
    void the_pieces_come_off_the_part_reel_that_just_holds_them() {
        reel("A", 20_000, 50_000);
        reel("B", 3_270, 50_000);
        String plan = drawn("\"tape\": \"%s-T\"".formatted(site));

        JsonNode tape = one(plan).path("parts").path("materials").path(0);

        assertThat(tape.path("reels").size()).isEqualTo(1);
        JsonNode reel = tape.path("reels").path(0);
        assertThat(reel.path("reelId").asString()).isEqualTo(site + "-B");
        assertThat(StreamSupport.stream(reel.path("pieces").spliterator(), false)
                        .map(piece -> piece.path("treeId").asString().substring(site.length() + 1) + " "
                                + piece.path("lengthMm").asLong()))
                .containsExactly("1 1090", "2 1290", "3 890");
        assertThat(reel.path("scrapMm").asLong()).isZero();
        assertThat(tape.path("quality").path("proven").asBoolean()).isTrue();
    }

    // Burlap: girth + 150, up to the next 5 mm; by hand 1150, 1350, 950 mm, one tie each.
    @Test
    void a_burlap_band_is_cut_from_cloth_and_its_ties_are_counted() {
        reel("A", 20_000, 50_000);
        Http.Answer withTape = draw("\"tape\": \"%1$s-T\", \"device\": \"burlap-band\"".formatted(site));
        assertThat(withTape.status()).isEqualTo(400);
        assertThat(withTape.body().path("detail").asString()).contains("[burlap-band] has no part of tape");

        JsonNode parts = one(drawn("\"mesh\": \"%s-T\", \"device\": \"burlap-band\"".formatted(site)))
                .path("parts");

        assertThat(parts.path("use").path("device").asString()).isEqualTo("burlap-band");
        assertThat(parts.path("materials").size()).isEqualTo(1);
        assertThat(parts.path("materials").path(0).path("kind").asString()).isEqualTo("MESH");
        assertThat(parts.path("materials").path(0).path("reels").path(0).path("pieces"))
                .extracting(piece -> piece.path("lengthMm").asLong())
                .containsExactlyInAnyOrder(1150L, 1350L, 950L);
        assertThat(parts.path("trees"))
                .extracting(tree -> tree.path("others").asLong())
                .containsExactly(1L, 1L, 1L);
    }

    // The overlap of the policy for this pest is 100 instead of 50 mm: 1000 + 100 + 2 x 19, up to 1140 mm.
    @Test
    void the_lengths_follow_the_policy_of_the_programme_and_the_pest() {
        reel("A", 20_000, 50_000);
        String scope = "\"programme\": \"%s\", \"pest\": \"CHEIBR\"".formatted(site);
        done("/policies/cut-lengths", """
                "validFrom": "2026-01-01", %s, "source": "a made-up table", "reason": "wide bark",
                "values": {"tapeOverlap": "100 mm", "tapeTab": "19 mm", "tapeWidest": "5 in", "meshExtra": "12 in",
                 "meshLeastStandOff": "1 in", "meshWidestOpening": "1/2 in", "fastenerSpacing": "6 in",
                 "fastenerMinimum": 6, "heightUsual": "4 ft", "heightLowest": "3 ft", "heightHighest": "5 ft",
                 "girthMinimum": "479 mm", "girthQuestionAbove": "6 m", "girthChangePermille": 250,
                 "removeAfterDays": 120, "lateAfterDays": 3}""".formatted(scope));
        seen();
        JsonNode house = one(drawn("\"tape\": \"%s-T\"".formatted(site))).path("parts");
        JsonNode own =
                one(drawn("\"tape\": \"%s-T\", %s".formatted(site, scope))).path("parts");
        assertThat(own.path("policyVersion").asInt())
                .isNotEqualTo(house.path("policyVersion").asInt());
        assertThat(own.path("materials").path(0).path("reels").path(0).path("pieces"))
                .extracting(piece -> piece.path("lengthMm").asLong())
                .contains(1140L);
        assertThat(own.path("use").path("pest").asString()).isEqualTo("CHEIBR");
    }

    @Test
    void what_the_depot_cannot_serve_is_named_with_what_to_buy() {
        reel("A", 2_500, 50_000);
        JsonNode tape = one(drawn("\"tape\": \"%s-T\"".formatted(site)))
                .path("parts")
                .path("materials")
                .path(0);

        assertThat(tape.path("uncut").size()).isEqualTo(1);
        assertThat(tape.path("toBuy").path("reels").asInt()).isEqualTo(1);
        assertThat(tape.path("toBuy").path("reelLengthMm").asLong()).isEqualTo(50_000);
    }

    @Test
    void an_agreed_plan_binds_its_reels_until_it_is_dropped() {
        reel("A", 20_000, 50_000);
        String first = drawn("\"tape\": \"%s-T\"".formatted(site));
        String second = drawn("\"tape\": \"%s-T\"".formatted(site));
        done("/cut-plans/%s/agreed".formatted(first), "\"partly\": false");

        Http.Answer other = post("/cut-plans/%s/agreed".formatted(second), "\"partly\": false");
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.body().path("detail").asString()).contains("another plan binds " + site + "-A");
        assertThat(draw("\"tape\": \"%s-T\"".formatted(site)).status())
                .as("no free reel is left for a third")
                .isEqualTo(409);

        done("/cut-plans/%s/dropped".formatted(first), "\"reason\": \"rain all week\"");
        done("/cut-plans/%s/agreed".formatted(second), "\"partly\": false");
        done("/cut-plans/%s/handed-over".formatted(second), "\"kitId\": \"K-77\"");
        seen();
        assertThat(one(first).path("plan").path("reason").asString()).isEqualTo("rain all week");
        assertThat(one(second).path("plan").path("state").asString()).isEqualTo("handed over");
        assertThat(one(second).path("plan").path("kitId").asString()).isEqualTo("K-77");
    }

    @Test
    void a_reel_that_got_shorter_since_is_not_promised() {
        reel("A", 20_000, 50_000);
        String plan = drawn("\"tape\": \"%s-T\"".formatted(site));
        jdbc.sql("UPDATE depot_place SET quantity = 1000 WHERE id = ?")
                .param(site + "-A")
                .update();

        Http.Answer agreed = post("/cut-plans/%s/agreed".formatted(plan), "\"partly\": false");

        assertThat(agreed.status()).isEqualTo(409);
        assertThat(agreed.body().path("detail").asString()).contains("has 1.000 m now, the plan counts on 20.000 m");
    }

    @Test
    void without_the_owners_consent_nothing_is_planned() {
        reel("A", 20_000, 50_000);
        Http.Answer answer = post("/cut-plans", """
                "depotId": "D-%s", "day": "2025-05-06", "tape": "%s-T", "trees": [{"treeId": "%s-1"}]""".formatted(site, site, site));
        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.body().path("detail").asString()).contains(site).contains("2025-05-06");
    }

    @Test
    void a_tree_nobody_measured_is_named() {
        reel("A", 20_000, 50_000);
        done("/trees", "\"siteId\": \"%s\", \"tag\": \"9\"".formatted(site));
        seen();
        Http.Answer answer = post("/cut-plans", """
                "depotId": "D-%s", "day": "2026-05-06", "tape": "%s-T", "trees": [{"treeId": "%s-9"}]""".formatted(site, site, site));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body().path("detail").asString())
                .contains(site + "-9")
                .contains("nobody measured its girth");
    }

    @Test
    void the_same_request_sent_twice_draws_one_plan() {
        reel("A", 20_000, 50_000);
        String id = Http.commandId();
        String body = """
                {"commandId": "%s", "depotId": "D-%s", "day": "2026-05-06", "tape": "%s-T",
                 "trees": [{"treeId": "%s-1"}]}""".formatted(id, site, site, site);
        Http.Answer first = http.post("/cut-plans", body);
        Http.Answer again = http.post("/cut-plans", body);
        assertThat(first.status()).as(first.body().toString()).isEqualTo(200);
        assertThat(again.body()).isEqualTo(first.body());
    }

    private void tree(String tag, String girth) {
        done("/trees", "\"siteId\": \"%s\", \"tag\": \"%s\", \"girth\": \"%s\"".formatted(site, tag, girth));
    }

    private void reel(String id, long lengthMm, long receivedMm) {
        jdbc.sql("""
                        INSERT INTO depot_holding (holding, id, material_code, kind, received, received_at, cost_minor,
                                                   currency)
                        VALUES ('reel', ?, ?, 'TAPE', ?, now(), 4200, 'USD')""").params(site + "-" + id, site + "-T", receivedMm).update();
        jdbc.sql("INSERT INTO depot_place VALUES ('reel', ?, ?, '', false, ?)")
                .params(site + "-" + id, "D-" + site, lengthMm)
                .update();
    }

    private Http.Answer draw(String more) {
        return post("/cut-plans", """
                "depotId": "D-%1$s", "day": "2026-05-06", %2$s,
                "trees": [{"treeId": "%1$s-1"}, {"treeId": "%1$s-2"}, {"treeId": "%1$s-3"}]""".formatted(site, more));
    }

    private String drawn(String more) {
        Http.Answer answer = draw(more);
        assertThat(answer.status()).as(answer.body().toString()).isEqualTo(200);
        seen();
        return answer.body().path("planId").asString();
    }

    private JsonNode one(String plan) {
        return http.get("/cut-plans/" + plan).body();
    }

    private Http.Answer post(String path, String fields) {
        return http.post(path, "{\"commandId\": \"%s\", %s}".formatted(Http.commandId(), fields));
    }

    private void done(String path, String fields) {
        Http.Answer answer = post(path, fields);
        assertThat(answer.status()).as(answer.body().toString()).isEqualTo(200);
    }

    private void seen() {
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
    }
}

package org.bandtrail.supplystock.kits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.supplystock.kits.KitsClient.TREES;

import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** The life of a kit through the front door, from the tree list to the settlement. */
@OnPostgres
class KitsOverHttpTest {
    private static final String RETURN = """
        {"personId": "D-P", "depotId": "D-", "reels": [{"reelId": "D-R1", "measured": "50 m"},
         {"reelId": "D-R2", "measured": "%s"}], "batches": [{"batchId": "D-B1", "counted": 32}],
         "happenedAt": "2026-05-04T17:00:00Z"}\
        """;

    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    @Test
    void a_tree_list_becomes_a_kit_from_the_part_reel_first_and_is_settled_when_all_is_accounted_for() {
        KitsClient depot = stocked("KA");
        JsonNode planned = depot.ok("/kits", depot.kit("K1", TREES));
        // By the usual rule (common practice): girth + 50 + 2 x 19; 1260 -> 1348, 4 ft = 1219 -> 1307 twice; 900 given.
        assertThat(planned.path("tapeMm").asLong()).isEqualTo(1_348 + 2 * 1_307 + 900);
        assertThat(planned.path("fasteners").asLong()).isEqualTo(9 + 2 * 9 + 5);
        assertThat(planned.path("picks"))
                .extracting(pick ->
                        pick.path("id").asString() + " " + pick.path("quantity").asLong())
                .containsExactly("KA-R2 2248", "KA-R1 2614", "KA-B1 32");
        assertThat(depot.state("K1")).isEqualTo("reserved");

        depot.ok("/kits/KA-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        assertThat(depot.state("K1")).isEqualTo("out");
        depot.told("R2", "P", "T-1", 1_348, "2026-05-04T09:00:00Z");
        depot.ok("/returns", depot.own(RETURN.formatted("752 mm")));

        assertThat(depot.line("K1", "R2")).isEqualTo("3000 = 1348 + 752 + 0 + 900 + 0");
        assertThat(depot.state("K1")).isEqualTo("settled");
    }

    @Test
    void a_kit_follows_the_reels_of_a_cut_plan_and_says_where_it_cannot() {
        KitsClient depot = stocked("KW");
        String wish = depot.kit("K1", TREES).replace("\"trees\"", depot.own("""
                        "reels": [{"treeId": "T-1", "kind": "TAPE", "reelId": "D-R1"},
                         {"treeId": "T-3", "kind": "TAPE", "reelId": "D-R9"}], "trees\""""));

        JsonNode planned = depot.ok("/kits", wish);

        assertThat(planned.path("picks"))
                .extracting(pick ->
                        pick.path("id").asString() + " " + pick.path("quantity").asLong())
                .containsExactly("KW-R2 2614", "KW-R1 2248", "KW-B1 32");
        assertThat(planned.path("otherwise"))
                .extracting(tree ->
                        tree.path("treeId").asString() + " " + tree.path("why").asString())
                .containsExactly("T-3 reel KW-R9 is not there");
    }

    @Test
    void only_the_person_who_has_the_kit_signs_for_it() {
        KitsClient depot = stocked("KS").out();

        assertThat(depot.refused("/kits/KS-K1/sign", "{}")).contains("KS-P").contains("own sign-in");
        assertThat(depot.get("/kits/KS-K1").path("kit").path("signedAt").isNull())
                .isTrue();
        new OverHttp(port, key, "KS-P").ok("/kits/KS-K1/sign", "{}");

        assertThat(depot.get("/kits/KS-K1").path("kit").path("signedBy").asString())
                .isEqualTo("KS-P");
    }

    @Test
    void a_late_fact_of_the_field_reopens_a_settled_kit_visibly() {
        KitsClient depot = stocked("KB").out();
        depot.ok("/returns", depot.own(RETURN.formatted("1652 mm")));
        assertThat(depot.line("K1", "R2")).isEqualTo("3000 = 0 + 1652 + 0 + 1348 + 0");

        depot.told("R2", "P", "T-1", 1_348, "2026-05-04T09:00:00Z");

        JsonNode kit = depot.get("/kits/KB-K1");
        assertThat(depot.line("K1", "R2")).isEqualTo("3000 = 1348 + 1652 + 0 + 0 + 0");
        assertThat(kit.path("settlement").path("story"))
                .extracting(turn ->
                        turn.path("turn").asString() + " " + turn.path("what").asString())
                .containsExactly("settled returned", "reopened fitted", "settled fitted");
        assertThat(kit.path("kit").path("reopened").asInt()).isOne();
    }

    @Test
    void a_reserved_reel_goes_out_in_no_other_kit_until_it_is_released() {
        KitsClient depot = stocked("KC");
        depot.ok("/kits", depot.kit("K1", TREES));
        String direct = """
            {"kitId": "KC-K2", "depotId": "KC", "crewId": "C-1", "personId": "KC-Q", "reels": ["KC-R2"],
             "happenedAt": "2026-05-04T07:30:00Z"}\
            """;

        assertThat(depot.refused("/handouts", direct)).contains("KC-R2").contains("reserved for kit KC-K1");
        assertThat(depot.ok("/kits/plan", depot.kit("K3", TREES)).path("passedOver"))
                .extracting(reel -> reel.path("why").asString())
                .contains("reserved for kit KC-K1");
        depot.ok("/kits/KC-K1/release", "{\"reason\": \"rain all week\"}");
        assertThat(depot.state("K1")).isEqualTo("released");
        depot.ok("/handouts", direct);
    }

    @Test
    void a_list_the_depot_cannot_fill_is_refused_with_what_is_missing_and_reserves_nothing() {
        KitsClient depot = stocked("KD");
        String wish = depot.kit("K1", "{\"treeId\": \"T-9\", \"tape\": \"60 m\", \"fasteners\": 300}");

        assertThat(depot.refused("/kits", wish))
                .contains("tree T-9, 60.000 m together")
                .contains("200 pieces of the 300 pieces of KD-PIN");
        assertThat(depot.get("/kits?person=KD-P").path("rows")).isEmpty();
        depot.ok("/kits", depot.kit("K1", TREES));
    }

    private KitsClient stocked(String name) {
        return new KitsClient(new OverHttp(port, key, "P-01"), name, work, commands, projectors).stocked();
    }
}

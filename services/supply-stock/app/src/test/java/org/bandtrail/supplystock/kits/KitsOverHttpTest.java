package org.bandtrail.supplystock.kits;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

@OnPostgres
class KitsOverHttpTest {
    private static final String TREES = """
            {"treeId": "T-1", "girth": "1260 mm"}, {"treeId": "T-2", "girth": "4 ft", "bands": 2},
            {"treeId": "T-3", "tape": "900 mm", "fasteners": 5}""";

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
        JsonNode planned = depot.ok("/kits", depot.kit("KA-K1", TREES));
        // By the usual rule (common practice): girth + 50 + 2 x 19; 1260 -> 1348, 4 ft = 1219 -> 1307 twice; 900 given.
        assertThat(planned.path("tapeMm").asLong()).isEqualTo(1_348 + 2 * 1_307 + 900);
        assertThat(planned.path("fasteners").asLong()).isEqualTo(9 + 2 * 9 + 5);
        assertThat(planned.path("picks"))
                .extracting(pick -> pick.path("id").asString() + " " + pick.path("quantity").asLong())
                .containsExactly("KA-R2 2248", "KA-R1 2614", "KA-B1 32");
        assertThat(state(depot, "KA-K1")).isEqualTo("reserved");

        depot.ok("/kits/KA-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        assertThat(depot.refused("P-01", "/kits/KA-K1/sign", "{}")).contains("KA-P").contains("own sign-in");
        depot.as("KA-P", "/kits/KA-K1/sign", "{}");
        assertThat(depot.get("/kits/KA-K1").path("kit").path("signedBy").asString()).isEqualTo("KA-P");
        assertThat(state(depot, "KA-K1")).isEqualTo("out");

        fitted("KA", "KA-R2", "T-1", 1_348, "2026-05-04T09:00:00Z");
        depot.ok("/returns", """
                {"personId": "KA-P", "depotId": "KA", "reels": [{"reelId": "KA-R1", "measured": "50 m"},
                 {"reelId": "KA-R2", "measured": "752 mm"}], "batches": [{"batchId": "KA-B1", "counted": 32}],
                 "happenedAt": "2026-05-04T17:00:00Z"}""");
        JsonNode settled = depot.get("/kits/KA-K1").path("settlement");
        assertThat(settled.path("settled").asBoolean()).isTrue();
        assertThat(line(settled, "KA-R2")).isEqualTo("3000 = 1348 + 752 + 0 + 900 + 0");
        assertThat(state(depot, "KA-K1")).isEqualTo("settled");
    }

    @Test
    void a_late_fact_of_the_field_reopens_a_settled_kit_visibly() {
        KitsClient depot = stocked("KB");
        depot.ok("/kits", depot.kit("KB-K1", TREES));
        depot.ok("/kits/KB-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        depot.ok("/returns", """
                {"personId": "KB-P", "depotId": "KB", "reels": [{"reelId": "KB-R1", "measured": "50 m"},
                 {"reelId": "KB-R2", "measured": "1652 mm"}], "batches": [{"batchId": "KB-B1", "counted": 32}],
                 "happenedAt": "2026-05-04T17:00:00Z"}""");
        assertThat(line(depot.get("/kits/KB-K1").path("settlement"), "KB-R2")).isEqualTo("3000 = 0 + 1652 + 0 + 1348 + 0");

        fitted("KB", "KB-R2", "T-1", 1_348, "2026-05-04T09:00:00Z");

        JsonNode kit = depot.get("/kits/KB-K1");
        assertThat(line(kit.path("settlement"), "KB-R2")).isEqualTo("3000 = 1348 + 1652 + 0 + 0 + 0");
        assertThat(kit.path("settlement").path("story"))
                .extracting(turn -> turn.path("turn").asString() + " " + turn.path("what").asString())
                .containsExactly("settled returned", "reopened fitted", "settled fitted");
        assertThat(kit.path("kit").path("reopened").asInt()).isOne();
    }

    @Test
    void a_reserved_reel_goes_out_in_no_other_kit_until_it_is_released() {
        KitsClient depot = stocked("KC");
        depot.ok("/kits", depot.kit("KC-K1", TREES));
        String direct = """
                {"kitId": "KC-K2", "depotId": "KC", "crewId": "C-1", "personId": "KC-Q", "reels": ["KC-R2"],
                 "happenedAt": "2026-05-04T07:30:00Z"}""";

        assertThat(depot.refused("P-01", "/handouts", direct)).contains("KC-R2").contains("reserved for kit KC-K1");
        assertThat(depot.ok("/kits/plan", depot.kit("KC-K3", TREES)).path("passedOver"))
                .extracting(reel -> reel.path("why").asString())
                .contains("reserved for kit KC-K1");
        depot.ok("/kits/KC-K1/release", "{\"reason\": \"rain all week\"}");
        assertThat(state(depot, "KC-K1")).isEqualTo("released");
        depot.ok("/handouts", direct);
        assertThat(depot.refused("P-01", "/kits/KC-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:40:00Z\"}"))
                .isNotEmpty();
    }

    @Test
    void a_list_the_depot_cannot_fill_is_refused_with_what_is_missing_and_reserves_nothing() {
        KitsClient depot = stocked("KD");
        String wish = depot.kit("KD-K1", "{\"treeId\": \"T-9\", \"tape\": \"60 m\", \"fasteners\": 300}");

        assertThat(depot.refused("P-01", "/kits", wish))
                .contains("tree T-9, 60.000 m together")
                .contains("200 pieces of the 300 pieces of KD-PIN");
        assertThat(depot.get("/kits?person=KD-P").path("rows")).isEmpty();
        depot.ok("/kits", depot.kit("KD-K1", TREES));
    }

    @Test
    void the_pick_sheet_on_paper_names_reel_bin_and_centimetres_in_the_order_of_the_walk() throws IOException {
        KitsClient depot = stocked("KE");
        depot.ok("/kits", depot.kit("KE-K1", TREES));

        try (PDDocument pdf = Loader.loadPDF(depot.file("/kits/KE-K1/pick-sheet.pdf?name=Wren"))) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("Kit KE-K1 for Wren", "KE-R2", "2.25 m", "T-1", "1.35 m", "2 x 1.31 m");
            assertThat(text.indexOf("T-1")).isLessThan(text.indexOf("T-2"));
            assertThat(text).contains("not signed yet", "gloves");
        }
    }

    @Test
    void custody_is_told_for_any_moment_as_it_happened_and_as_it_was_known() {
        KitsClient depot = stocked("KF");
        depot.ok("/crews", """
                {"crewId": "KF-C", "name": "Heron", "depotId": "KF", "people": ["KF-P"]}""");
        depot.ok("/kits", depot.kit("KF-K1", TREES));
        depot.ok("/kits/KF-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        fitted("KF", "KF-R2", "T-1", 1_348, "2026-05-04T09:00:00Z");

        assertThat(withPerson(depot, "person=KF-P")).containsExactly("KF-B1 32", "KF-R1 50000", "KF-R2 1652");
        assertThat(withPerson(depot, "person=KF-P&at=2027-01-01T00:00:00Z"))
                .as("from the steps as from the balances")
                .isEqualTo(withPerson(depot, "person=KF-P"));
        assertThat(withPerson(depot, "person=KF-P&at=2026-05-04T08:00:00Z"))
                .containsExactly("KF-B1 32", "KF-R1 50000", "KF-R2 3000");
        assertThat(withPerson(depot, "person=KF-P&knownAt=2026-05-04T08:00:00Z")).isEmpty();
        assertThat(withPerson(depot, "crew=KF-C")).hasSize(3);
        assertThat(withPerson(depot, "crew=KF-C&at=2026-05-04T08:00:00Z"))
                .as("the crew was formed later")
                .isEmpty();
        assertThat(depot.get("/settlements?person=KF-P").path("rows"))
                .extracting(row -> row.path("unit").asString() + " " + row.path("handedOut").asLong())
                .containsExactly("pieces 32", "mm 53000");
    }

    @Test
    void a_reel_that_was_put_into_another_bin_is_found_there() {
        KitsClient depot = stocked("KH");
        depot.ok("/kits", depot.kit("KH-K1", TREES));
        work.inOneTransaction(() -> {
            commands.send(new ReelCommand.Relocate(
                    new ReelId("KH-R2"),
                    StockMove.PUT_IN_BIN,
                    Place.depot(new DepotId("KH")),
                    Place.bin(new DepotId("KH"), "B-07"),
                    null,
                    null,
                    null,
                    new PersonId("P-01"),
                    Occurred.at(Instant.parse("2026-05-04T07:05:00Z"))));
            return true;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();

        JsonNode first = depot.get("/kits/KH-K1").path("collect").get(0);
        assertThat(first.path("id").asString() + " in " + first.path("bin").asString())
                .isEqualTo("KH-R2 in B-07");
        depot.ok("/kits/KH-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        assertThat(state(depot, "KH-K1")).isEqualTo("out");
    }

    @Test
    void a_rebuilt_settlement_is_the_same_as_the_old_one() {
        KitsClient depot = stocked("KG");
        depot.ok("/kits", depot.kit("KG-K1", TREES));
        depot.ok("/kits/KG-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        fitted("KG", "KG-R2", "T-1", 1_348, "2026-05-04T09:00:00Z");
        List<JsonNode> before = List.of(depot.get("/kits/KG-K1"), depot.get("/settlements?person=KG-P"));

        for (String projection : List.of("custody", "kit-life", "hold")) {
            projectors.rebuild(projection);
        }

        assertThat(List.of(depot.get("/kits/KG-K1"), depot.get("/settlements?person=KG-P"))).isEqualTo(before);
    }

    /** R1 is full; R2 came later and something was cut from it, so it goes first; 100 pins. */
    private KitsClient stocked(String name) {
        KitsClient depot = new KitsClient(port, key, name).items();
        depot.reel(name + "-R1", "50 m", "2026-04-20T08:00:00Z");
        depot.reel(name + "-R2", "10 m", "2026-04-21T08:00:00Z");
        depot.batch(name + "-B1", 100);
        depot.ok("/handouts", """
                {"kitId": "%s-K0", "depotId": "%s", "crewId": "C-1", "personId": "%s-Z", "reels": ["%s-R2"],
                 "happenedAt": "2026-04-22T07:00:00Z"}""".formatted(name, name, name, name));
        told(name + "-R2", name + "-Z", "T-0", 7_000, "2026-04-22T09:00:00Z");
        depot.ok("/returns", """
                {"personId": "%s-Z", "depotId": "%s", "reels": [{"reelId": "%s-R2", "measured": "3 m"}],
                 "happenedAt": "2026-04-22T17:00:00Z"}""".formatted(name, name, name));
        return depot;
    }

    private void fitted(String depot, String reel, String tree, long mm, String happened) {
        told(reel, depot + "-P", tree, mm, happened);
    }

    private void told(String reel, String person, String tree, long mm, String happened) {
        work.inOneTransaction(() -> {
            commands.send(new ReelCommand.RecordFact(
                    new ReelId(reel),
                    "band B-1",
                    Place.crew(new PersonId(person)),
                    Place.tree(new TreeId(tree)),
                    Length.ofMm(mm),
                    new SiteId("S-1"),
                    new PersonId(person),
                    new Occurred(Instant.parse(happened), Instant.parse("2026-05-06T08:00:00Z"))));
            return true;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
    }

    private static String state(KitsClient depot, String kit) {
        return depot.get("/kits/" + kit).path("kit").path("state").asString();
    }

    private static String line(JsonNode settlement, String id) {
        for (JsonNode line : settlement.path("lines")) {
            if (line.path("id").asString().equals(id)) {
                return "%d = %d + %d + %d + %d + %d"
                        .formatted(
                                line.path("handedOut").asLong(),
                                line.path("fitted").asLong(),
                                line.path("returned").asLong(),
                                line.path("scrapped").asLong(),
                                line.path("missing").asLong(),
                                line.path("stillOut").asLong());
            }
        }
        return "no line of " + id;
    }

    private static List<String> withPerson(KitsClient depot, String asked) {
        return depot.get("/custody?" + asked).path("rows").valueStream()
                .map(row -> row.path("id").asString() + " "
                        + row.path("withPerson").asLong())
                .toList();
    }
}

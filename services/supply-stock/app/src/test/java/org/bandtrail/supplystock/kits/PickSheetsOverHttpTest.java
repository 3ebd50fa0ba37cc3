package org.bandtrail.supplystock.kits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.supplystock.kits.KitsClient.TREES;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** What is read of a kit through the front door: pick sheets, custody, settlements. */
@OnPostgres
class PickSheetsOverHttpTest {
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
    void the_pick_sheet_on_paper_names_reel_bin_and_centimetres_in_the_order_of_the_walk() throws IOException {
        KitsClient depot = stocked("KE");
        depot.ok("/kits", depot.kit("K1", TREES));

        try (PDDocument pdf = Loader.loadPDF(depot.counter().file("/kits/KE-K1/pick-sheet.pdf?name=Wren"))) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("Kit KE-K1 for Wren", "KE-R2", "2.25 m", "T-1", "1.35 m", "2 x 1.31 m");
            assertThat(text.indexOf("T-1")).isLessThan(text.indexOf("T-2"));
            assertThat(text).contains("not signed yet", "gloves");
        }
    }

    @Test
    void a_long_list_goes_over_several_sheets_and_loses_no_tree() throws IOException {
        KitsClient depot = stocked("KL");
        String trees = IntStream.rangeClosed(101, 190)
                .mapToObj("{\"treeId\": \"T-%d\", \"tape\": \"500 mm\", \"fasteners\": 1}"::formatted)
                .collect(Collectors.joining(","));
        depot.ok("/kits", depot.kit("K1", trees));

        try (PDDocument pdf = Loader.loadPDF(depot.counter().file("/kits/KL-K1/pick-sheet.pdf?units=US"))) {
            assertThat(pdf.getNumberOfPages()).isGreaterThan(1);
            String text = new PDFTextStripper().getText(pdf);
            for (int tree = 101; tree <= 190; tree++) {
                assertThat(text).contains("T-" + tree);
            }
            assertThat(text).contains("1 ft 7 5/8 in");
        }
    }

    @Test
    void a_reel_that_was_put_into_another_bin_is_found_there() {
        KitsClient depot = stocked("KH");
        depot.ok("/kits", depot.kit("K1", TREES));
        DepotId id = new DepotId("KH");
        depot.send(new ReelCommand.Relocate(
                new ReelId("KH-R2"),
                StockMove.PUT_IN_BIN,
                Place.depot(id),
                Place.bin(id, "B-07"),
                null,
                null,
                null,
                new PersonId("P-01"),
                Occurred.at(Instant.parse("2026-05-04T07:05:00Z"))));

        JsonNode first = depot.get("/kits/KH-K1").path("collect").get(0);
        assertThat(first.path("id").asString() + " in " + first.path("bin").asString())
                .isEqualTo("KH-R2 in B-07");
        depot.ok("/kits/KH-K1/hand-out", "{\"happenedAt\": \"2026-05-04T07:10:00Z\"}");
        assertThat(depot.state("K1")).isEqualTo("out");
    }

    @Test
    void custody_is_told_for_any_moment_as_it_happened_and_as_it_was_known() {
        KitsClient depot = stocked("KF");
        depot.ok("/crews", "{\"crewId\": \"KF-C\", \"name\": \"Heron\", \"depotId\": \"KF\", \"people\": [\"KF-P\"]}");
        depot.out().told("R2", "P", "T-1", 1_348, "2026-05-04T09:00:00Z");

        assertThat(depot.withPerson("person=KF-P")).containsExactly("KF-B1 32", "KF-R1 50000", "KF-R2 1652");
        assertThat(depot.withPerson("person=KF-P&at=2027-01-01T00:00:00Z"))
                .as("from the steps as from the balances")
                .isEqualTo(depot.withPerson("person=KF-P"));
        assertThat(depot.withPerson("person=KF-P&at=2026-05-04T08:00:00Z"))
                .containsExactly("KF-B1 32", "KF-R1 50000", "KF-R2 3000");
        assertThat(depot.withPerson("person=KF-P&knownAt=2026-05-04T08:00:00Z")).isEmpty();
        assertThat(depot.withPerson("crew=KF-C")).hasSize(3);
        assertThat(depot.withPerson("crew=KF-C&at=2026-05-04T08:00:00Z"))
                .as("the crew was formed later")
                .isEmpty();
        assertThat(depot.get("/settlements?person=KF-P").path("rows"))
                .extracting(row -> row.path("unit").asString() + " "
                        + row.path("handedOut").asLong())
                .containsExactly("pieces 32", "mm 53000");
    }

    @Test
    void a_rebuilt_settlement_is_the_same_as_the_old_one() {
        KitsClient depot = stocked("KG").out();
        depot.told("R2", "P", "T-1", 1_348, "2026-05-04T09:00:00Z");
        List<JsonNode> before = List.of(depot.get("/kits/KG-K1"), depot.get("/settlements?person=KG-P"));

        for (String projection : List.of("custody", "kit-life", "hold")) {
            projectors.rebuild(projection);
        }

        assertThat(List.of(depot.get("/kits/KG-K1"), depot.get("/settlements?person=KG-P")))
                .isEqualTo(before);
    }

    private KitsClient stocked(String name) {
        return new KitsClient(new OverHttp(port, key, "P-01"), name, work, commands, projectors).stocked();
    }
}

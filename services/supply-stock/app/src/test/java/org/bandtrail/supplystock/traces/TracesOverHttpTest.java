package org.bandtrail.supplystock.traces;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

/** From a lot to every tree, bag and load, and from a tree back to the order, as a client asks it. */
@OnPostgres
class TracesOverHttpTest {
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

    @Autowired
    JdbcClient jdbc;

    private OverHttp http() {
        return new OverHttp(port, key, "P-LEAD");
    }

    private DeliveredLot story(String mark) {
        DeliveredLot story = new DeliveredLot(http(), work, commands, mark, mark + " 4711")
                .deliver()
                .handOut("R1")
                .useOnTrees("R1")
                .slit("R2");
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return story;
    }

    @Test
    void a_lot_leads_to_its_reels_their_strips_and_every_place_that_holds_or_held_some_of_it() {
        story("TA");

        JsonNode trace = http().get("/traces?what=lot&id=ta  4711");
        assertThat(trace.path("id").asString()).isEqualTo("TA 4711");
        assertThat(trace.path("holdings").asLong())
                .as("four reels and two strips")
                .isEqualTo(6);
        assertThat(trace.path("origins")).singleElement().satisfies(origin -> {
            assertThat(origin.path("purchaseId").asString()).isEqualTo("TA-PO");
            assertThat(origin.path("deliveryId").asString()).isEqualTo("TA-D1");
            assertThat(origin.path("supplierId").asString()).isEqualTo("TA-SUP");
            assertThat(origin.path("holdings").asLong()).isEqualTo(6);
        });
        assertThat(trace.path("stations"))
                .extracting(each -> each.path("kind").asString() + " "
                        + each.path("lengthMm").asLong() + " "
                        + each.path("placesNow").asLong() + " of "
                        + each.path("placesEver").asLong())
                .containsExactly(
                        "depot 180000 2 of 2",
                        "crew 48000 1 of 1",
                        "tree 1100 1 of 2",
                        "bag 500 1 of 1",
                        "disposed 400 1 of 1");

        JsonNode parts = http().get("/traces/holdings?what=lot&id=TA 4711").path("rows");
        assertThat(parts)
                .extracting(part -> part.path("id").asString() + " from "
                        + part.path("madeFrom").asString("the supplier") + ", "
                        + part.path("lot").asString())
                .containsExactly(
                        "TA-R1 from the supplier, TA 4711",
                        "TA-R2 from the supplier, TA 4711",
                        "TA-R2A from TA-R2, TA 4711",
                        "TA-R2B from TA-R2, TA 4711",
                        "TA-R3 from the supplier, TA 4711",
                        "TA-R4 from the supplier, TA 4711");
    }

    @Test
    void what_is_gone_from_a_place_is_told_with_nothing_left_and_pages_of_two_tell_the_same_as_one_page() {
        story("TB");

        JsonNode trees =
                http().get("/traces/places?what=lot&id=TB 4711&kind=tree").path("rows");
        assertThat(trees)
                .extracting(tree -> tree.path("place").asString() + " "
                        + tree.path("quantity").asLong() + " "
                        + tree.path("siteId").asString() + " " + tree.path("by").asString())
                .containsExactly("tree:TB-T1 1100 TB-SITE P-01", "tree:TB-T2 0 TB-SITE P-01");
        assertThat(http().get("/traces/places?what=lot&id=TB 4711&kind=tree,bag&gone=false")
                        .path("rows"))
                .extracting(row -> row.path("place").asString())
                .containsExactly("bag:TB-BAG", "tree:TB-T1");

        List<String> inOne = new ArrayList<>();
        http().get("/traces/places?what=lot&id=TB 4711").path("rows").forEach(row -> inOne.add(row.toString()));
        List<String> inPages = new ArrayList<>();
        String after = "";
        while (!after.equals("end")) {
            JsonNode page = http().get("/traces/places?what=lot&id=TB 4711&limit=2&after=" + after);
            page.path("rows").forEach(row -> inPages.add(row.toString()));
            after = page.path("next").asString("end");
        }
        assertThat(inOne).hasSizeGreaterThan(8);
        assertThat(inPages).isEqualTo(inOne);
    }

    @Test
    void a_tree_a_bag_and_a_load_lead_back_to_reel_lot_order_and_invoice() {
        story("TC");
        jdbc.sql("""
                        INSERT INTO billed_line (position, invoice_id, invoice_line, purchase_id, line, quantity, net_minor,
                            at_receipt_minor, currency, verdict, by_person, billed_at)
                        VALUES (-3, 'TC-INV', '1', 'TC-PO', 1, 200000, 14400, 14400, 'USD', 'matches', 'P-09', now())""").update();

        for (String asked : List.of("tree&id=TC-T2", "bag&id=tc-bag", "load&id=TC-LOAD")) {
            JsonNode trace = http().get("/traces?what=" + asked);
            assertThat(trace.path("origins")).as(asked).singleElement().satisfies(origin -> {
                assertThat(origin.path("lot").asString()).isEqualTo("TC 4711");
                assertThat(origin.path("purchaseId").asString()).isEqualTo("TC-PO");
                assertThat(origin.path("invoices").get(0).asString()).isEqualTo("TC-INV");
            });
            assertThat(http().get("/traces/holdings?what=" + asked).path("rows"))
                    .as(asked)
                    .extracting(part -> part.path("id").asString())
                    .containsExactly("TC-R1");
        }
    }

    @Test
    void a_strip_leads_back_through_its_slitting_and_a_scanned_label_is_found_for_what_it_is() {
        story("TD");

        JsonNode strip = http().get("/traces?what=reel&id=TD-R2B");
        assertThat(strip.path("holdings").asLong()).isEqualTo(1);
        assertThat(strip.path("origins").get(0).path("lot").asString()).isEqualTo("TD 4711");
        assertThat(http().get("/traces?what=reel&id=TD-R2").path("holdings").asLong())
                .as("the wide reel and its strips")
                .isEqualTo(3);

        assertThat(http().get("/traces/found?find=td-r1").path("rows"))
                .extracting(found ->
                        found.path("what").asString() + " " + found.path("id").asString())
                .containsExactly("reel TD-R1");
        assertThat(http().get("/traces/found?find=td 4711").path("rows"))
                .extracting(found -> found.path("what").asString())
                .containsExactly("lot");
        assertThat(http().get("/traces/found?find=TD-T1").path("rows"))
                .extracting(found -> found.path("what").asString())
                .containsExactly("tree");
        assertThat(http().get("/traces/found?find=nobody").path("rows")).isEmpty();
    }
}

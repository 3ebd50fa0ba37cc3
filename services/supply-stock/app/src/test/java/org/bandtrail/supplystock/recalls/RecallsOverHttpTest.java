package org.bandtrail.supplystock.recalls;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.bandtrail.supplystock.traces.DeliveredLot;
import org.bandtrail.supplystock.traces.Traces;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** A lot is taken out of use everywhere at once, and given back, as the depot and the programme lead see it. */
@OnPostgres
class RecallsOverHttpTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

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

    private OverHttp http() {
        return new OverHttp(port, key, "P-LEAD");
    }

    private DeliveredLot story(String mark) {
        DeliveredLot story = new DeliveredLot(http(), work, commands, mark, mark + "-LOT").deliver();
        assertThat(projectors.caughtUp(PATIENCE)).isTrue();
        return story;
    }

    private JsonNode recall(String mark) {
        return http().ok(
                        "/recalls",
                        "{\"recallId\": \"%1$s-RC\", \"lot\": \"%1$s-lot\", \"reason\": \"the adhesive runs\"}"
                                .formatted(mark));
    }

    @Test
    void all_that_lies_in_depots_goes_aside_at_once_and_what_is_out_is_listed_to_be_brought_back() {
        story("RA").handOut("R1").useOnTrees("R1").slit("R2");
        assertThat(projectors.caughtUp(PATIENCE)).isTrue();

        JsonNode done = recall("RA");
        assertThat(done.path("lines"))
                .extracting(line ->
                        line.path("id").asString() + " " + line.path("quantity").asLong())
                .containsExactlyInAnyOrder("RA-R2 20000", "RA-R2A 30000", "RA-R2B 30000", "RA-R3 50000", "RA-R4 50000");

        JsonNode whole = http().get("/recalls/RA-RC");
        assertThat(whole.path("recall").path("lengthMm").asLong()).isEqualTo(180_000);
        assertThat(whole.path("trace").path("stations"))
                .extracting(each -> each.path("kind").asString() + " "
                        + each.path("lengthMm").asLong())
                .containsExactly("set-aside 180000", "depot 0", "crew 48000", "tree 1100", "bag 500", "disposed 400");
        assertThat(http().get("/recalls/RA-RC/places?kind=crew,vehicle,in-transit")
                        .path("rows"))
                .extracting(row ->
                        row.path("place").asString() + " " + row.path("id").asString())
                .containsExactly("crew:RA-P RA-R1");
        assertThat(http().get("/recalls/RA-RC/places?kind=tree").path("rows"))
                .extracting(row -> row.path("place").asString() + " on "
                        + row.path("siteId").asString())
                .containsExactly("tree:RA-T1 on RA-SITE");
        assertThat(http().get("/recalls?open=true").path("rows"))
                .extracting(row -> row.path("recallId").asString())
                .contains("RA-RC");
        assertThat(http().get("/audit?recount=true").path("zero").asBoolean()).isTrue();
    }

    @Test
    void nothing_of_the_lot_is_handed_out_or_accepted_while_the_recall_is_open() {
        story("RB");
        recall("RB");

        String kit = """
                {"kitId": "RB-K", "depotId": "RB-YARD", "crewId": "RB-C", "personId": "RB-P", "reels": ["RB-R3"],
                 "happenedAt": "2026-05-13T07:00:00Z"}""";
        assertThat(http().refused(409, "/handouts", kit))
                .isEqualTo(
                        "Reel [RB-R3] is of lot RB-LOT of RB-SUP, which is recalled: the adhesive runs. Take another one, or"
                                + " lift recall RB-RC first.");
        assertThat(http().refused(
                                409,
                                "/set-aside/release",
                                "{\"depotId\": \"RB-YARD\", \"reelId\": \"RB-R3\", \"reason\": \"looks sound\"}"))
                .contains("lift recall RB-RC first");
        assertThat(http().refused(
                                409,
                                "/recalls",
                                "{\"recallId\": \"RB-RC2\", \"lot\": \"rb-LOT\", \"reason\": \"again\"}"))
                .contains("RB-LOT", "RB-RC");
        assertThat(
                        http().refused(
                                        422,
                                        "/recalls",
                                        "{\"recallId\": \"RB-RC3\", \"lot\": \"OTHER\", \"supplierId\": \"RB-SUP\", \"reason\": \" \"}"))
                .contains("reason");
    }

    @Test
    void what_comes_back_or_is_delivered_later_goes_aside_as_well() {
        DeliveredLot story = story("RD").handOut("R1");
        assertThat(projectors.caughtUp(PATIENCE)).isTrue();
        recall("RD");

        http().ok("/returns", """
                {"personId": "RD-P", "depotId": "RD-YARD", "reels": [{"reelId": "RD-R1", "measured": "49 m"}],
                 "happenedAt": "2026-05-13T17:00:00Z"}""");
        http().ok("/deliveries", """
                {"deliveryId": "RD-D2", "supplierId": "%1$s-SUP", "depotId": "RD-YARD", "accept": true,
                 "lines": [{"materialCode": "RD-TAPE", "cost": {"minor": 3600, "currency": "USD"},
                            "reels": [{"reelId": "RD-R9", "length": "50 m", "lot": "RD-LOT"}]}]}""".formatted(story.mark()));

        until(() -> place("RD-R1").equals("set-aside:RD-YARD") && place("RD-R9").equals("set-aside:RD-YARD"));
        until(() -> http().get("/recalls/RD-RC").path("recall").path("lengthMm").asLong() == 150_000 + 49_000 + 50_000);
        assertThat(http().get("/audit?recount=true").path("zero").asBoolean()).isTrue();
    }

    @Test
    void lifting_releases_what_the_recall_set_aside_and_leaves_aside_what_was_aside_before() {
        story("RE");
        http().ok("/deliveries", """
                {"deliveryId": "RE-D2", "supplierId": "RE-SUP", "depotId": "RE-YARD", "accept": false,
                 "lines": [{"materialCode": "RE-TAPE", "cost": {"minor": 3600, "currency": "USD"},
                            "reels": [{"reelId": "RE-R8", "length": "50 m", "lot": "RE-LOT"}]}]}""");
        assertThat(projectors.caughtUp(PATIENCE)).isTrue();
        recall("RE");
        assertThat(http().refused(409, "/deliveries/RE-D2/accept", "{\"keys\": [\"reel/RE-R8\"]}"))
                .contains("RE-LOT");

        JsonNode lifted = http().ok("/recalls/RE-RC/lift", "{\"reason\": \"tested, it holds\"}");

        assertThat(lifted.path("lines")).hasSize(4);
        assertThat(place("RE-R3")).isEqualTo("depot:RE-YARD");
        assertThat(place("RE-R8")).as("still waits to be accepted").isEqualTo("set-aside:RE-YARD");
        assertThat(http().refused(409, "/recalls/RE-RC/lift", "{\"reason\": \"again\"}"))
                .contains("not open");
        http().ok("/handouts", """
                {"kitId": "RE-K", "depotId": "RE-YARD", "crewId": "RE-C", "personId": "RE-P", "reels": ["RE-R3"],
                 "happenedAt": "2026-05-14T07:00:00Z"}""");
        assertThat(http().get("/recalls/RE-RC")
                        .path("recall")
                        .path("liftReason")
                        .asString())
                .isEqualTo("tested, it holds");
    }

    @Test
    void another_supplier_with_the_same_lot_is_not_recalled_and_a_lot_of_two_asks_whose() {
        story("RF");
        http().ok("/suppliers", "{\"supplierId\": \"RF-OTHER\", \"name\": \"The other one\"}");
        http().ok("/deliveries", """
                {"deliveryId": "RF-D2", "supplierId": "RF-OTHER", "depotId": "RF-YARD", "accept": true,
                 "lines": [{"materialCode": "RF-TAPE", "cost": {"minor": 3600, "currency": "USD"},
                            "reels": [{"reelId": "RF-X1", "length": "50 m", "lot": "RF-LOT"}]}]}""");

        JsonNode both = http().get("/traces?what=lot&id=RF-LOT");
        assertThat(both.path("holdings").asLong()).isEqualTo(5);
        assertThat(both.path("suppliers")).extracting(JsonNode::asString).containsExactly("RF-OTHER", "RF-SUP");
        JsonNode one = http().get("/traces?what=lot&id=rf-lot&supplier=rf-other");
        assertThat(one.path("holdings").asLong()).isEqualTo(1);
        assertThat(http().get("/traces/found?find=RF-LOT").path("rows"))
                .extracting(found -> found.path("supplierId").asString())
                .containsExactly("RF-OTHER", "RF-SUP");
        assertThat(http().refused(422, "/recalls", recallOf("RF-RC", ""))).contains("delivered by RF-OTHER and RF-SUP");
        assertThat(http().refused(422, "/recalls", "{\"recallId\": \"RF-N\", \"lot\": \"NEVER\", \"reason\": \"x\"}"))
                .contains("Nothing of lot [NEVER] was delivered yet");

        JsonNode done = http().ok("/recalls", recallOf("RF-RC", "\"supplierId\": \"RF-SUP\","));

        assertThat(done.path("lines"))
                .extracting(line -> line.path("id").asString())
                .containsExactlyInAnyOrder("RF-R1", "RF-R2", "RF-R3", "RF-R4");
        http().ok("/handouts", """
                {"kitId": "RF-K", "depotId": "RF-YARD", "crewId": "RF-C", "personId": "RF-P", "reels": ["RF-X1"],
                 "happenedAt": "2026-05-14T07:00:00Z"}""");
        assertThat(http().get("/recalls/RF-RC").path("trace").path("holdings").asLong())
                .isEqualTo(4);
        http().ok("/recalls", recallOf("RF-RC2", "\"supplierId\": \"RF-OTHER\","));
    }

    private static String recallOf(String recall, String supplier) {
        return "{\"recallId\": \"%s\", \"lot\": \"RF-LOT\", %s \"reason\": \"the adhesive runs\"}"
                .formatted(recall, supplier);
    }

    @Test
    void a_recall_stored_before_suppliers_were_named_is_of_the_lot_of_whichever_supplier() {
        RecallRow old = new RecallRow("R", "L 1", null, "why", "P", java.time.Instant.EPOCH, 0, 0, 0, null, null, null);
        assertThat(old.means(new Traces.SuppliersLot("L 1", "HOLM"))).isTrue();
        assertThat(old.means(new Traces.SuppliersLot("L 2", "HOLM"))).isFalse();
    }

    private String place(String reel) {
        return http().get("/reels/" + reel).path("balance").path("place").asString();
    }

    private static void until(BooleanSupplier done) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!done.getAsBoolean()) {
            assertThat(System.nanoTime()).as("it did not happen in " + PATIENCE).isLessThan(end);
            java.util.concurrent.locks.LockSupport.parkNanos(20_000_000);
        }
    }
}

package org.bandtrail.supplystock.discrepancies;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Open questions through the front door: causes from the books, and the moves that end one. */
@OnPostgres
class DiscrepanciesOverHttpTest extends QuestionsOverHttp {
    @Test
    void a_piece_told_of_the_reel_one_number_off_moves_to_the_right_one() {
        PersonId person = new PersonId("P-31");
        out("DQ-12", person);
        out("DQ-13", person);
        // 1.25 m really came off 12 and was told of 13.
        fitted("DQ-13", person, "1.25 m");
        back("DQ-12", person, "48.75 m");
        back("DQ-13", person, "50 m");

        JsonNode open = question("DQ-12");
        assertThat(open.path("worth").path("minor").asLong())
                .as("1.25 m of 50 m for 18.00")
                .isEqualTo(45);
        assertThat(open.path("lastHolder").asString()).isEqualTo("P-31");
        JsonNode cause = open.path("causes").get(0);
        assertThat(cause.path("kind").asString()).isEqualTo("WRONG_LABEL");
        assertThat(cause.path("other").asString()).isEqualTo("DQ-13");
        assertThat(cause.path("through").asString()).isEqualTo("tree:DQ-T1");
        assertThat(cause.path("evidence").asString()).contains("DQ-13 has 1.250 m more recorded");

        ok("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-12", "place": "missing:P-31", "through": "tree:DQ-T1", "other": "DQ-13",
                 "reason": "label read wrong"}""");

        assertThat(question("DQ-12").isMissingNode()).isTrue();
        assertThat(question("DQ-13").isMissingNode()).isTrue();
        assertThat(get("/reels/DQ-12")
                        .path("balance")
                        .path("charged")
                        .path("minor")
                        .asLong())
                .isEqualTo(45);
        assertThat(get("/reels/DQ-13")
                        .path("balance")
                        .path("charged")
                        .path("minor")
                        .asLong())
                .isZero();
        assertThat(get("/reels/DQ-12").path("history").toString()).contains("put right", "label read wrong");
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void a_piece_that_went_into_a_bag_since_is_put_right_where_it_is_now() {
        PersonId person = new PersonId("P-36");
        out("DQ-92", person);
        fitted("DQ-93", person, "1.187 m");
        back("DQ-92", person, "48.813 m");
        Place bag = Place.bag(new BagId("DQ-BAG"));
        send(new ReelCommand.RecordFact(
                new ReelId("DQ-93"),
                "taken down",
                TREE,
                bag,
                Length.parse("1.187 m"),
                null,
                person,
                Occurred.at(MORNING.plus(Duration.ofDays(20)))));

        ok("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-93", "place": "crew:P-36", "through": "tree:DQ-T1", "other": "DQ-92",
                 "reason": "label read wrong"}""");

        assertThat(question("DQ-92").isMissingNode()).isTrue();
        assertThat(question("DQ-93").isMissingNode()).isTrue();
        assertThat(get("/reels/DQ-92").path("balance").path("inBagMm").asLong()).isEqualTo(1_187);
        // 1.187 m of 50 m for 18.00 are 42.73 cents.
        assertThat(get("/reels/DQ-92")
                        .path("balance")
                        .path("charged")
                        .path("minor")
                        .asLong())
                .isEqualTo(43);
        assertThat(get("/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void what_turned_up_is_put_back_as_measured_and_the_rest_can_be_written_off() {
        PersonId person = new PersonId("P-32");
        out("DQ-21", person);
        back("DQ-21", person, "40 m");

        ok("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "through": "depot:DQ", "measured": "9.5 m",
                 "reason": "offcut found in the truck"}""");
        assertThat(question("DQ-21").path("quantity").asLong()).isEqualTo(500);
        assertThat(get("/reels/DQ-21").path("balance").path("inDepotMm").asLong())
                .isEqualTo(49_500);
        assertThat(refused("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "through": "depot:DQ", "measured": "1 m",
                 "reason": "more"}""")).contains("DQ-21");

        ok("/discrepancies/settle", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "reason": "torn off and thrown away"}""");
        assertThat(question("DQ-21").isMissingNode()).isTrue();
        assertThat(refused("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-21", "place": "missing:P-32", "through": "depot:DQ", "reason": "again"}""")).contains("agree");
    }

    @Test
    void another_reel_that_has_nothing_opposite_is_refused_and_nothing_moves() {
        PersonId person = new PersonId("P-33");
        out("DQ-41", person);
        back("DQ-41", person, "49 m");
        out("DQ-49", new PersonId("P-39"));

        assertThat(refused("/discrepancies/put-right", """
                {"material": "reel", "id": "DQ-41", "place": "missing:P-33", "through": "tree:DQ-T1", "other": "DQ-49",
                 "reason": "perhaps"}""")).contains("DQ-49");
        assertThat(question("DQ-41").path("quantity").asLong()).isEqualTo(1_000);
    }
}

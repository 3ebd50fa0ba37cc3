package org.bandtrail.supplystock.discrepancies;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Open questions through the front door: one waits, and the list goes on page by page. */
@OnPostgres
class WaitingOverHttpTest extends QuestionsOverHttp {
    @Test
    void a_question_waits_and_comes_back_when_its_amount_changes() {
        PersonId person = new PersonId("P-34");
        out("DQ-51", person);
        back("DQ-51", person, "45 m");
        LocalDate until = LocalDate.now(ZoneOffset.UTC).plusDays(14);

        ok("/discrepancies/wait", """
                {"material": "reel", "id": "DQ-51", "place": "missing:P-34", "until": "%s",
                 "reason": "the telephone is in repair"}""".formatted(until));
        assertThat(question("DQ-51").path("waitsUntil").asString()).isEqualTo(until.toString());
        assertThat(get("/discrepancies?waiting=false").toString()).doesNotContain("DQ-51");
        projectors.rebuild("waiting-question");
        assertThat(get("/discrepancies?waiting=false").toString()).doesNotContain("DQ-51");

        fitted("DQ-51", person, "2 m");
        assertThat(question("DQ-51").path("quantity").asLong()).isEqualTo(3_000);
        assertThat(get("/discrepancies?waiting=false").toString()).contains("DQ-51");
        assertThat(refused("/discrepancies/wait", """
                {"material": "reel", "id": "DQ-51", "place": "missing:P-34", "until": "2020-01-01", "reason": "x"}""")).contains("2020-01-01");
    }

    @Test
    void the_list_goes_on_where_a_page_ended() {
        PersonId person = new PersonId("P-35");
        for (String reel : new String[] {"DQ-61", "DQ-71", "DQ-81"}) {
            out(reel, person);
            back(reel, person, "44 m");
        }

        JsonNode all = get("/discrepancies").path("rows");
        JsonNode first = get("/discrepancies?limit=2");
        JsonNode second = getAfter(first.path("next").asString());

        assertThat(first.path("rows")).hasSize(2);
        assertThat(second.path("rows").get(0).path("id")).isEqualTo(all.get(2).path("id"));
    }
}

package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.Test;

/** The home page, from recorded answers of supply-stock. */
class TrailPageTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @Test
    void the_home_page_answers_in_a_sentence_and_draws_every_material() throws Exception {
        desk.services().recorded("GET /trail", "trail.json");
        desk.services().recorded("GET /audit", "audit.json");

        String page = desk.reads(Role.LEAD, "/").getContentAsString();

        assertThat(page)
                .contains("<b>4,200.00 m</b> of tape received")
                .contains("The audit reads zero; one question between books and field is open.");
        assertThat(page.split("<svg class=\"trail", -1))
                .as("wide and tall for three materials")
                .hasSize(7);
        assertThat(page)
                .contains("Tape on the way: 40.00 m, 40,000 mm stored", "/where?at=in-transit")
                .contains("Tape in vehicles: 25.00 m", "Tape set aside: 5.00 m", "-10.00 m");
        assertThat(page).contains("Tape missing: 3.95 m, 3,950 mm stored").doesNotContain("written off");
    }

    @Test
    void the_services_are_told_who_reads_and_given_the_key() throws Exception {
        desk.services().recorded("GET /trail", "trail.json");
        desk.services().recorded("GET /audit", "audit.json");

        desk.reads(Role.CREW, "/");

        assertThat(desk.services().last("GET").person()).isEqualTo("P-CREW");
        assertThat(desk.services().last("GET").key()).isEqualTo("Bearer " + RunningDesk.KEY);
    }

    @Test
    void a_service_that_fails_gives_a_calm_page_that_says_what_still_works() throws Exception {
        var answer = desk.reads(Role.LEAD, "/");

        assertThat(answer.getStatus()).isEqualTo(503);
        assertThat(answer.getContentAsString()).contains("One part does not answer right now", "What still works");
    }
}

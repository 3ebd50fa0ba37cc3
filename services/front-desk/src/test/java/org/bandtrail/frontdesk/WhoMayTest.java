package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may do what, asked of the running application. */
class WhoMayTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @ParameterizedTest
    @CsvSource({
        "/reels,             DEPOT LEAD",
        "/batches,           DEPOT LEAD",
        "/handouts,          DEPOT LEAD",
        "/returns,           DEPOT LEAD",
        "/loads,             DEPOT LEAD",
        "/kits,              DEPOT LEAD",
        "/kits/plan,         DEPOT LEAD",
        "/kits/K-1/hand-out, DEPOT LEAD",
        "/kits/K-1/release,  DEPOT LEAD",
        "/kits/K-1/sign,     DEPOT CREW LEAD",
        "/transfers,         DEPOT LEAD",
        "/transfers/TR-1/arrive, DEPOT LEAD",
        "/transfers/TR-1/call-off, DEPOT LEAD",
        "/bins,              DEPOT LEAD",
        "/bins/put,          DEPOT LEAD",
        "/vehicles,          DEPOT LEAD",
        "/vehicles/load,     DEPOT LEAD",
        "/vehicles/unload,   DEPOT LEAD",
        "/take-back,         DEPOT LEAD",
        "/consents/warning,  LEAD",
        "/set-up/items/TAPE, DEPOT LEAD",
        "/set-aside,         DEPOT LEAD",
        "/set-aside/release, DEPOT LEAD",
        "/slittings,         DEPOT LEAD",
        "/set-up/items,      DEPOT LEAD",
        "/set-up/depots,     DEPOT LEAD",
        "/set-up/bins,       DEPOT LEAD",
        "/set-up/crews,      DEPOT LEAD",
        "/set-up/crews/C-1/people, DEPOT LEAD",
        "/set-up/vehicles,   DEPOT LEAD",
        "/counts,            DEPOT LEAD",
        "/counts/rules,      LEAD",
        "/counts/C-1/lines,  DEPOT LEAD",
        "/counts/C-1/approve, DEPOT LEAD",
        "/discrepancies/put-right, DEPOT LEAD",
        "/discrepancies/wait, DEPOT LEAD",
        "/audit/settle,      DEPOT LEAD",
        "/recalls,           DEPOT LEAD",
        "/recalls/RC-1/lift, LEAD",
        "/sites,             DEPOT LEAD",
        "/sites/S-1/close,   LEAD",
        "/sites/S-1/consents, LEAD",
        "/consents/C-1/withdraw, LEAD",
        "/consents/C-1/erase-contact, LEAD",
        "/trees,             DEPOT LEAD",
        "/trees/duplicates,  DEPOT LEAD",
        "/trees/duplicates/undo, DEPOT LEAD",
        "/trees/T-1/girths,  CREW LEAD",
        "/trees/T-1/host-check, CREW LEAD",
        "/trees/T-1/correct, DEPOT CREW LEAD",
        "/trees/T-1/gone,    CREW LEAD",
        "/trees/T-1/found-again, CREW LEAD",
        "/photos/PH-1/erase, LEAD",
        "/policies,          LEAD",
        "/bands,             CREW LEAD",
        "/bands/B-1/visit,   CREW LEAD",
        "/bands/B-1/take-down, CREW LEAD",
        "/mesh-pieces,       DEPOT CREW LEAD",
        "/mesh-pieces/MP-1/grade, DEPOT CREW LEAD",
        "/mesh-pieces/MP-1/put, DEPOT CREW LEAD",
        "/reorder/TAPE,      DEPOT FINANCE LEAD",
        "/people,            LEAD",
        "/people/P-9/erase,  LEAD",
        "/plans,             LEAD",
        "/plans/check,       LEAD",
        "/plans/P-1/change,  LEAD",
        "/plans/P-1/agree,   LEAD",
        "/plans/P-1/call-off, LEAD",
        "/orders,            DEPOT LEAD",
        "/orders/PO-1/close, DEPOT LEAD",
        "/deliveries,        DEPOT LEAD",
        "/deliveries/D-1/accept, DEPOT LEAD",
        "/suppliers,         DEPOT FINANCE LEAD",
        "/suppliers/S-1/quotes, DEPOT FINANCE LEAD",
        "/settings,          DEPOT CREW FINANCE LEAD",
    })
    void only_these_roles_may_write(String path, String allowed) throws Exception {
        for (Role role : Role.values()) {
            int status = desk.sends(role, path, "personId", "P-9", "name", "Nobody", "units", "SI", "theme", "auto")
                    .getStatus();
            if (allowed.contains(role.name())) {
                assertThat(status).as("%s writes %s", role, path).isNotEqualTo(403);
            } else {
                assertThat(status).as("%s writes %s", role, path).isEqualTo(403);
            }
        }
    }

    @Test
    void what_was_refused_never_reached_a_service() throws Exception {
        desk.sends(Role.FINANCE, "/reels", "reelId", "R-1");
        desk.sends(Role.CREW, "/audit/settle", "id", "R-1");

        assertThat(desk.services().asked()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"/", "/reels", "/audit", "/round", "/spend", "/settings", "/people", "/reels.csv"})
    void whoever_did_not_sign_in_sees_only_the_sign_in(String path) throws Exception {
        var answer = desk.mvc().perform(get(path)).andReturn().getResponse();

        assertThat(answer.getStatus()).isEqualTo(302);
        assertThat(answer.getRedirectedUrl()).endsWith("/sign-in");
    }

    @Test
    void a_form_without_its_token_is_refused() throws Exception {
        var answer = desk.mvc()
                .perform(post("/settings")
                        .with(user(RunningDesk.signedIn(Role.LEAD)))
                        .param("units", "US")
                        .param("theme", "dark"))
                .andReturn()
                .getResponse();

        assertThat(answer.getStatus()).isEqualTo(403);
    }

    @Test
    void people_are_created_by_programs_only_with_the_key_of_the_services() throws Exception {
        String body = """
                {"personId":"P-77","name":"Ivo Reedling","roles":["CREW"],"username":"ivo","password":"marsh"}""";

        assertThat(createsPerson(null, body)).isEqualTo(401);
        assertThat(createsPerson("Bearer wrong", body)).isEqualTo(401);
        assertThat(desk.people().find("P-77")).isEmpty();
        assertThat(createsPerson("Bearer " + RunningDesk.KEY, body)).isEqualTo(204);
        assertThat(createsPerson("Bearer " + RunningDesk.KEY, body)).as("again").isEqualTo(204);
        assertThat(desk.people().find("P-77")).get().satisfies(person -> {
            assertThat(person.name()).isEqualTo("Ivo Reedling");
            assertThat(person.roles()).containsExactly(Role.CREW);
        });
    }

    @Test
    void an_erased_person_leaves_no_name_and_cannot_sign_in() throws Exception {
        createsPerson("Bearer " + RunningDesk.KEY, """
                {"personId":"P-78","name":"Una Sedgely","phone":"555 0142","roles":["CREW"],\
                "username":"una","password":"marsh"}""");

        desk.sends(Role.LEAD, "/people/P-78/erase");

        assertThat(desk.people().find("P-78")).get().satisfies(person -> {
            assertThat(person.toString()).doesNotContain("Una", "555", "una");
            assertThat(person.erased()).isTrue();
            assertThat(person.roles()).isEmpty();
        });
    }

    private int createsPerson(@org.jspecify.annotations.Nullable String key, String body) throws Exception {
        var request = post("/api/people").contentType("application/json").content(body);
        if (key != null) {
            request.header("Authorization", key);
        }
        return desk.mvc().perform(request).andReturn().getResponse().getStatus();
    }
}

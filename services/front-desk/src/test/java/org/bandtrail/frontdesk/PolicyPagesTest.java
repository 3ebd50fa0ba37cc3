package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Policies and devices: every value says why, versions lie side by side, a new one is asked about first. */
class PolicyPagesTest {
    private static final String PATH = "/policies/cut-lengths";
    private static final String[] FIELDS = {
        "tapeOverlap",
        "2",
        "tapeTab",
        "19",
        "tapeWidest",
        "127",
        "bandWidth",
        "127",
        "bandsPerTree",
        "1",
        "guardType",
        "mesh",
        "meshExtra",
        "229",
        "guardSeam",
        "0",
        "meshLeastStandOff",
        "25",
        "meshWidestOpening",
        "13",
        "guardWider",
        "50",
        "guardClosedBelow",
        "true",
        "fastenerSpacing",
        "150",
        "fastenerMinimum",
        "4",
        "heightUsual",
        "1200",
        "heightLowest",
        "900",
        "heightHighest",
        "1500",
        "girthMinimum",
        "479",
        "girthQuestionAbove",
        "6000",
        "girthChangePermille",
        "250",
        "removeAfterDays",
        "150",
        "lateAfterDays",
        "2"
    };
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        desk.services().recorded("GET " + PATH, "policies.json");
        desk.services().recorded("GET " + PATH + "/in-force", "policy-in-force.json");
        desk.services().recorded("GET " + PATH + "/1", "policy-in-force.json");
        desk.services().recorded("GET " + PATH + "/2", "policy-two.json");
        desk.services().recorded("GET /species", "species.json");
        desk.services().recorded("GET /devices", "devices.json");
        desk.services().recorded("GET /devices/sticky-band/pieces", "device-pieces.json");
        desk.services().recorded("GET /proposals", "proposal.json");
        desk.services().recorded("GET /trees/T-1301", "tree.json");
        desk.services().recorded("GET /devices/screen-band/pieces", "device-pieces.json");
        desk.services().recorded("GET /devices/sticky-band-alone/pieces", "device-pieces.json");
    }

    private static String[] form(String... more) {
        List<String> sent = new ArrayList<>(List.of(
                "commandId",
                "01900000-0000-7000-8000-000000000003",
                "validFrom",
                "2026-07-01",
                "source",
                "trial",
                "reason",
                "tape came loose",
                "from",
                "1"));
        for (int field = 0; field < FIELDS.length; field += 2) {
            sent.addAll(List.of(FIELDS[field], FIELDS[field + 1], FIELDS[field] + "Unit", "mm"));
        }
        sent.addAll(List.of(more));
        return sent.toArray(String[]::new);
    }

    @Test
    void a_proposal_for_a_tree_takes_its_girth_from_the_books_and_asks_by_the_day_the_programme_and_the_pest()
            throws Exception {
        String kinds = RecordedServices.text("devices.json").replace("sticky-band-alone", "sticky-band");
        desk.services().answers("GET /devices", 200, kinds);

        String page = desk.reads(
                        Role.CREW,
                        "/proposal?tree=t-1301&device=sticky-band&day=2026-07-01&programme=RIVERSIDE&pest=CHEIBR")
                .getContentAsString();

        assertThat(page)
                .contains("/trees/T-1301", "Fit it", "1233 x 1.5")
                .contains("Cut mesh edges are sharp: gloves and eye protection.", "stands off");
        assertThat(desk.services().asked())
                .filteredOn(asked -> asked.path().endsWith("/pieces"))
                .singleElement()
                .extracting(RecordedServices.Asked::query)
                .asString()
                .contains("on=2026-07-01", "pest=CHEIBR", "programme=RIVERSIDE", "measure=metric", " mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/policies                | CHEIBR in RIVERSIDE          | Publish a new version",
                "/policies/2              | Other than in version        | <b>100 mm</b>",
                "/policies/2              | A guard must be wider        | 127 mm stored",
                "/policies/1              | No version came before it.   | 138 had passed the lower band",
                "/policies/new            | Usual is 20 mm to 150 mm     | value=\"479\"",
                "/policies/new?from=2     | value=\"CHEIBR\"             | value=\"100\"",
                "/devices                 | Published how-to             | Is no guard meant",
                "/proposal                | Name a tree or give a girth  | Sticky band under window screen",
                "/proposal?girth=1233&device=screen-band | 1,850 mm    | Look from below",
                "/proposal?girth=1233&device=kite | kite              | is no kind of device",
                "/devices?girth=1233      | 1,850 mm                     | 1233 x 1.5",
            })
    void a_page_shows_what_the_service_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @Test
    void lists_come_out_as_files_with_one_column_for_each_value() throws Exception {
        assertThat(desk.reads(Role.FINANCE, "/policies.csv").getContentAsString())
                .startsWith("version,programme,pest,valid_from,valid_until,tape_overlap_mm")
                .contains("2,RIVERSIDE,CHEIBR,2026-10-15,2027-03-31,100");
        assertThat(desk.reads(Role.CREW, "/policies.xlsx").getStatus()).isEqualTo(200);
        assertThat(desk.reads(Role.CREW, "/devices.csv").getContentAsString())
                .contains("screen-band,Sticky band under window screen,window screen,mesh,true");
    }

    @Test
    void a_doubtful_value_is_asked_about_and_only_a_confirmed_one_is_published() throws Exception {
        desk.services().answers("POST " + PATH + "/check", 200, """
                {"questions": [{"field": "tapeOverlapMm", "value": "2 mm", "perhaps": "51 mm",
                 "message": "Overlap [2 mm]: perhaps 51 mm, inches typed as millimetres?"}]}""");
        desk.services().answers("POST " + PATH, 200, "{\"validFrom\": \"2026-07-01\"}");

        String asked = desk.sends(Role.LEAD, "/policies", form()).getContentAsString();

        assertThat(asked)
                .contains("inches typed as millimetres?", "These values are as I mean them", "tape came loose");
        assertThat(desk.services().last("POST").path()).isEqualTo(PATH + "/check");

        var published = desk.sends(Role.LEAD, "/policies", form("confirmed", "yes"));

        assertThat(published.getRedirectedUrl()).isEqualTo("/policies");
        assertThat(desk.services().last("POST").body())
                .contains("\"tapeOverlap\":\"2 mm\"", "\"bandsPerTree\":1", "\"guardClosedBelow\":true")
                .contains("\"guardType\":\"mesh\"", "\"validFrom\":\"2026-07-01\"");
    }

    @Test
    void only_the_lead_begins_a_version() throws Exception {
        assertThat(desk.reads(Role.CREW, "/policies/new").getStatus()).isEqualTo(403);
        assertThat(desk.reads(Role.CREW, "/policies").getContentAsString()).doesNotContain("/policies/new");
    }

    @Test
    void a_girth_that_cannot_be_read_is_said_on_the_page() throws Exception {
        desk.services()
                .answers(
                        "GET /devices/screen-band/pieces",
                        400,
                        "{\"title\": \"No\", \"status\": 400, \"detail\": \"Girth [wide] has no unit.\"}");
        assertThat(desk.reads(Role.CREW, "/devices?girth=wide").getContentAsString())
                .contains("Girth [wide] has no unit.", "Sticky band alone");
    }
}

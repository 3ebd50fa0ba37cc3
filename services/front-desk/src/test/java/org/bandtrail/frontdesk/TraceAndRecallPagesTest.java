package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import org.bandtrail.frontdesk.people.Role;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Scanning a label, the way of a lot, recalling it, and the audit counted again, from recorded answers. */
class TraceAndRecallPagesTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        String[][] recordings = {
            {"/traces", "trace-lot"},
            {"/traces/holdings", "trace-holdings"},
            {"/traces/places", "trace-places"},
            {"/traces/found", "trace-found"},
            {"/recalls", "recalls"},
            {"/recalls/RC-2", "recall"},
            {"/recalls/RC-2/places", "trace-places"},
            {"/audit", "audit-recount"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
    }

    @Test
    void a_scanned_label_leads_to_what_bears_it_and_asks_where_two_things_do() throws Exception {
        assertThat(page("/trace")).contains("Scan or type", "autofocus");
        assertThat(page("/trace?find=X-1"))
                .contains("on more than one thing", "/trace/reel?id=X-1", "/trace/tree?id=X-1");

        desk.services()
                .answers(
                        "GET /traces/found",
                        200,
                        "{\"rows\":[{\"what\":\"lot\",\"id\":\"L 4711\",\"supplierId\":\"HOLM\"}],\"next\":null}");
        assertThat(desk.reads(Role.CREW, "/trace?find=l 4711").getRedirectedUrl())
                .isEqualTo("/trace/lot?id=L+4711&supplier=HOLM");
        desk.services().answers("GET /traces/found", 200, "{\"rows\":[],\"next\":null}");
        assertThat(page("/trace?find=nothing")).contains("Nothing in the books bears <b>nothing</b>");
    }

    @Test
    void a_lot_shows_its_way_as_a_drawing_and_the_same_in_tables() throws Exception {
        String page = page("/trace/lot?id=L 4711");

        assertThat(page)
                .contains("<h1>Lot L 4711</h1>", "3 reels and batches", "4.60 m on trees")
                .contains("class=\"thread tape\"", "R-0001 on trees", "slit from R-0001 to R-0001A")
                .contains("href=\"/orders/PO-7\"", "href=\"/deliveries/D-9\"", "href=\"/invoices/INV-31\"")
                .contains("70,000 mm stored".replace("70,000", "50,000"), "gone", "S-13")
                .contains("/trace/lot/places.csv?id=L%204711", "/trace/lot?id=L%204711&amp;supplier=&amp;kind=tree")
                .contains("whose do you mean?", "/trace/lot?id=L%204711&amp;supplier=PINE")
                .contains("href=\"/recalls/new?lot=L%204711");
        assertThat(desk.reads(Role.CREW, "/trace/lot?id=L 4711").getContentAsString())
                .doesNotContain("Recall this lot");
    }

    @Test
    void a_tree_leads_back_and_says_what_is_not_known() throws Exception {
        desk.services().recorded("GET /traces", "trace-tree.json");

        assertThat(page("/trace/tree?id=T-1301"))
                .contains("came with <b>1 delivery</b>", "without an order", "none yet")
                .doesNotContain("Where it is, and where it was");
    }

    @Test
    void a_recall_says_what_lies_aside_whom_to_call_in_and_which_trees_carry_it() throws Exception {
        assertThat(page("/recalls")).contains("One recall is open.", "the adhesive runs in the sun", "M 12");
        assertThat(page("/recalls/RC-2"))
                .contains(
                        "Lot L 4711 of HOLM is recalled", "70.00 m lie aside", "24.77 m still have to be brought back")
                .contains("with Crew Person", "tree T-1301", "Lift the recall");
        assertThat(desk.reads(Role.DEPOT, "/recalls/RC-2").getContentAsString())
                .doesNotContain("Why it may be used again");
    }

    @Test
    void a_recall_is_passed_on_as_it_was_typed_and_a_refusal_keeps_what_was_entered() throws Exception {
        desk.services().answers("POST /recalls", 200, "{}");
        var done = desk.sends(
                Role.DEPOT,
                "/recalls",
                "commandId",
                "c-1",
                "recallId",
                "RC-2",
                "lot",
                "l 4711",
                "supplierId",
                "HOLM",
                "reason",
                "it runs");
        assertThat(done.getRedirectedUrl()).isEqualTo("/recalls/RC-2");
        assertThat(desk.services().last("POST").body())
                .contains(
                        "\"recallId\":\"RC-2\"",
                        "\"lot\":\"l 4711\"",
                        "\"supplierId\":\"HOLM\"",
                        "\"reason\":\"it runs\"");

        desk.services()
                .answers("POST /recalls", 409, "{\"title\":\"No\",\"detail\":\"Lot [L 4711] is recalled already.\"}");
        assertThat(desk.sends(Role.DEPOT, "/recalls", "recallId", "RC-3", "lot", "L 4711", "reason", "again")
                        .getContentAsString())
                .contains("is recalled already", "value=\"again\"");
    }

    @Test
    void the_audit_counted_again_names_each_sum_that_is_not_that_of_its_rows() throws Exception {
        assertThat(page("/audit?recount=true"))
                .contains(
                        "A sum that is kept is not that of its rows",
                        "Reels, balance TAPE: tree: kept 4600, counted 4599");
        assertThat(desk.services().last("GET").query()).isEqualTo("recount=true");
        desk.services().recorded("GET /audit", "audit.json");
        assertThat(page("/audit")).contains("href=\"/audit?recount=true\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"recalls.xlsx", "recalls/RC-2/places.xlsx", "trace/lot/holdings.xlsx?id=L 4711"})
    void every_list_comes_out_as_a_sheet_with_its_header(String list) throws Exception {
        desk.services().answers("GET /recalls/RC-2/places", 200, "{\"rows\":[],\"next\":null}");
        var answer = desk.reads(Role.FINANCE, "/" + list);

        assertThat(answer.getStatus()).as(list).isEqualTo(200);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(answer.getContentAsByteArray()))) {
            assertThat(book.getFirstSheet().read().getFirst().getCellText(0)).isNotBlank();
        }
    }

    private String page(String path) throws Exception {
        var answer = desk.reads(Role.LEAD, path);
        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        return answer.getContentAsString();
    }
}

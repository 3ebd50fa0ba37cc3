package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import org.bandtrail.frontdesk.people.Role;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page that shows something, from recorded answers. */
class EveryPageTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void the_services_answer() {
        String[][] recordings = {
            {"/items", "items"},
            {"/depots", "depots"},
            {"/crews", "crews"},
            {"/reels", "reels"},
            {"/reels/R-0001", "reel"},
            {"/batches", "batches"},
            {"/batches/F-001", "batch"},
            {"/handouts", "handouts"},
            {"/kits", "kits"},
            {"/kits/K-1", "kit"},
            {"/kits/K-2", "kit-reserved"},
            {"/kits/rule", "kit-rule"},
            {"/custody", "custody"},
            {"/audit", "audit"},
            {"/counts", "counts"},
            {"/counts/C-1", "count-counting"},
            {"/counts/C-2", "count-review"},
            {"/counts/rules", "count-rules"},
            {"/count-plan", "count-plan"},
            {"/discrepancies", "discrepancies"},
            {"/spend", "spend"},
            {"/periods", "periods"},
            {"/periods/2026-05", "period-open"},
            {"/reorder-points", "reorder-points"},
            {"/sites", "sites"},
            {"/consents/standing", "standings"},
            {"/trees", "trees"},
            {"/trees/T-1301", "tree"},
            {"/tree-duplicates", "tree-duplicates"},
            {"/tree-duplicates/decisions", "tree-decisions"},
            {"/host-checks", "host-checks"},
            {"/host-checks/findings", "host-findings"},
            {"/photos", "photos"},
            {"/species", "species"},
            {"/proposals", "proposal"},
            {"/bags", "bags"},
            {"/whereabouts", "where-tree"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded("GET " + recording[0], recording[1] + ".json");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/audit                     | Where books and field disagree | 3,950 mm stored",
                "/reels                     | R-0001                    | 12,400 mm stored",
                "/reels/R-0001              | Of <b                     | entered 12 June",
                "/reels/new                 | Band tape, 127 mm wide    | River yard",
                "/batches                   | F-002                     | USD 45.00",
                "/batches/F-001             | 1,000 pieces              | 520",
                "/handouts                  | One kit is still out.     | should be ordered",
                "/handouts/new?depot=RIVER  | R-0002                    | Push pins, pieces",
                "/returns/new?person=P-CREW | Measure first.            | counted pieces",
                "/kits                      | reopened by a late fact   | Pack a kit from a tree list",
                "/kits/K-1                  | 0.70 m missing            | 0.20 m of it settled",
                "/kits/K-2                  | signs                     | Hand out, all or nothing",
                "/kits/new                  | common practice           | Band tape",
                "/custody                   | 2 people with 2 reels     | 3,950 mm stored",
                "/counts                    | One place has one item due to be counted. | A, every 30 days",
                "/counts/new?place=depot:RIVER/A-03 | value=\"A-03\" | The sheet is frozen",
                "/counts/rules              | Class A is counted every 30 days | Let these rules hold",
                "/counts/C-1                | One line waits for a figure. | Everything without a figure is not there",
                "/counts/C-2                | 2 lines differ, worth USD 12.39 | Somebody approves who did not count.",
                "/discrepancies             | 2 questions are open, worth USD 3.33 | one sign apart",
                "/discrepancies?waiting=yes | Waits until               | Put it right",
                "/waste                     | One bag waits             | BAG-1 with load L-1",
                "/trees                     | 1,260 mm                  | 1303",
                "/trees/T-1301              | one band                  | B-0001",
                "/trees/T-1301              | nobody has checked        | most like tree-of-heaven",
                "/trees/duplicates          | 2 pairs look like one     | T-1306 is part of T-1307",
                "/host-checks               | 1 band is up              | B-0001",
                "/sites                     | Mill pond woods           | Gate on the north side",
                "/bands/new?tree=T-1301     | 1,350 mm                  | Why these lengths",
                "/spend                     | USD 1,561.20              | Where the money is",
                "/reorder                   | order now                 | z = 1.65",
                "/where?at=tree             | tree T-1302               | 1,080 mm stored",
                "/mesh-pieces/new           | Name on its tag           | depot RIVER",
                "/stuck-animal              | Do not pull.              | 50 CFR part 21",
                "/settings                  | metres and millimetres    | P-LEAD",
                "/people                    | Add somebody              | Erase",
            })
    void a_page_shows_what_the_services_said(String path, String first, String second) throws Exception {
        var answer = desk.reads(Role.LEAD, path);

        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        assertThat(answer.getContentAsString()).contains(first, second);
    }

    @Test
    void who_reads_in_feet_sees_feet_and_the_stored_millimetres_beside_them() throws Exception {
        desk.sends(Role.FINANCE, "/settings", "units", "US", "theme", "dark");

        String page = desk.reads(Role.FINANCE, "/trees").getContentAsString();

        assertThat(page).contains("4 ft 1 5/8 in", "1,260 mm stored", "data-theme=\"dark\"");
        desk.sends(Role.FINANCE, "/settings", "units", "SI", "theme", "auto");
    }

    @Test
    void a_list_comes_out_as_csv_with_stored_values_and_units_in_the_headers() throws Exception {
        var answer = desk.reads(Role.FINANCE, "/reels.csv");

        assertThat(answer.getContentType()).startsWith("text/csv");
        assertThat(answer.getContentAsString())
                .startsWith("reel_id,material_code,received_mm,in_depot_mm")
                .contains("R-0001,TAPE-127,45720,0,12400,24770,4600,0,3950,0,crew:P-CREW,3850,USD,");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reels",
                "batches",
                "handouts",
                "kits",
                "kits/K-1/settlement",
                "custody",
                "reorder",
                "waste",
                "where",
                "counts",
                "counts/plan",
                "counts/C-2/lines",
                "discrepancies",
                "trees",
                "trees/duplicates",
                "trees/duplicates/decided",
                "host-checks",
                "sites",
                "bands",
                "mesh-pieces",
                "spend",
                "audit"
            })
    void every_list_comes_out_as_a_sheet_with_its_header(String list) throws Exception {
        desk.services().answers("GET /bands", 200, "{\"rows\":[],\"next\":null}");
        var answer = desk.reads(Role.FINANCE, "/" + list + ".xlsx");

        assertThat(answer.getStatus()).as(list).isEqualTo(200);
        assertThat(answer.getHeader("Content-Disposition"))
                .contains("attachment")
                .endsWith(".xlsx\"");
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(answer.getContentAsByteArray()))) {
            assertThat(book.getFirstSheet().read().getFirst().getCellText(0)).isNotBlank();
        }
    }

    @Test
    void a_page_that_is_not_there_says_so_in_our_own_words() throws Exception {
        assertThat(desk.reads(Role.LEAD, "/nowhere").getStatus()).isEqualTo(404);
    }

    @Test
    void pages_may_load_nothing_from_elsewhere() throws Exception {
        assertThat(desk.reads(Role.LEAD, "/settings").getHeader("Content-Security-Policy"))
                .contains("default-src 'self'", "frame-ancestors 'none'");
    }
}

package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Trees that stand in the register twice: the pairs, what is decided of them, and a tree that is part of another. */
class DuplicatesPagesTest {
    private static final String COMMAND = "019a0000-0000-7000-8000-0000000000d1";
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void recordedServices() {
        String[][] recordings = {
            {"GET /tree-duplicates", "tree-duplicates"},
            {"GET /tree-duplicates/decisions", "tree-decisions"},
            {"GET /sites", "sites"},
            {"GET /species", "species"},
            {"GET /photos", "photos"},
            {"GET /host-checks", "host-checks"},
            {"GET /host-checks/findings", "host-findings"},
        };
        for (String[] recording : recordings) {
            desk.services().recorded(recording[0], recording[1] + ".json");
        }
    }

    @Test
    void the_page_says_how_many_pairs_and_why_each_is_one() throws Exception {
        String page = desk.reads(Role.DEPOT, "/trees/duplicates").getContentAsString();
        assertThat(page)
                .contains("2 pairs look like one tree", "Common practice, no source.", "differ by no more than 10")
                .contains("The same tag at one site. 1.40 m apart. Girths differ by 30 mm. Their species differ")
                .contains("The very same place. Only one was measured.")
                .contains("The same tree: keep T-1301", "Not the same", "Take it back")
                .contains("T-1306 is part of T-1307", "two stems a metre apart");
        assertThat(desk.reads(Role.FINANCE, "/trees/duplicates").getContentAsString())
                .contains("2 pairs look like one tree")
                .doesNotContain("Not the same", "Take it back");
    }

    @Test
    void keeping_one_merges_the_other_and_not_the_same_keeps_both() throws Exception {
        desk.services().answers("POST /tree-duplicates/merge", 200, "{}");
        desk.services().answers("POST /tree-duplicates/apart", 200, "{}");
        desk.services().answers("GET /trees/T-1304", 200, """
                {"treeId":"T-1304","siteId":"S-MILL","tag":"01301","mergedInto":"T-1301"}""");
        var merged = desk.sends(
                Role.LEAD,
                "/trees/duplicates",
                "commandId",
                COMMAND,
                "first",
                "T-1301",
                "second",
                "T-1304",
                "reason",
                "one trunk",
                "keep",
                "T-1301",
                "site",
                "");
        assertThat(merged.getStatus()).isEqualTo(302);
        assertThat(desk.services().asked().toString()).contains("\"kept\":\"T-1301\"", "\"merged\":\"T-1304\"");

        desk.sends(
                Role.DEPOT,
                "/trees/duplicates",
                "commandId",
                COMMAND,
                "first",
                "T-1301",
                "second",
                "T-1304",
                "reason",
                "two trunks",
                "keep",
                "",
                "site",
                "S-MILL");
        assertThat(desk.services().asked().toString()).contains("/tree-duplicates/apart", "two trunks");
    }

    @Test
    void what_is_refused_comes_back_with_its_reason_and_what_was_typed() throws Exception {
        desk.services().answers("POST /tree-duplicates/merge", 409, """
                {"type":"/problems/tree-pair-refused","title":"Not done","status":409,
                 "detail":"[T-1301] is merged into [T-9]. Keep [T-9]."}""");
        String page = desk.sends(
                        Role.LEAD,
                        "/trees/duplicates",
                        "commandId",
                        COMMAND,
                        "first",
                        "T-1301",
                        "second",
                        "T-1304",
                        "reason",
                        "saw it myself",
                        "keep",
                        "T-1301",
                        "site",
                        "")
                .getContentAsString();
        assertThat(page).contains("Keep [T-9].", "saw it myself");
    }

    @Test
    void lists_come_out_as_csv_with_the_reason_in_words() throws Exception {
        assertThat(desk.reads(Role.FINANCE, "/trees/duplicates.csv").getContentAsString())
                .startsWith("tree_id,tag,site_id,girth_mm,other_tree_id")
                .contains("T-1301,1301,S-MILL,1260,T-1304", "yes,1397,30,", "The very same place.");
        assertThat(desk.reads(Role.FINANCE, "/trees/duplicates/decided.csv").getContentAsString())
                .contains("T-1306,T-1307,one tree,T-1307", "T-1308,T-1309,two trees,,");
    }

    @Test
    void a_tree_that_is_part_of_another_says_so_and_the_other_marks_what_was_written_for_it() throws Exception {
        desk.services().answers("GET /trees/T-1", 200, """
                {"treeId":"T-1","siteId":"S-MILL","tag":"1","mergedInto":"T-2","history":[],"bands":[],"merged":[]}""");
        desk.services().answers("GET /bands", 200, """
                {"rows":[{"bandId":"B-1","treeId":"T-1","siteId":"S-MILL","state":"up"}],"next":null}""");
        desk.services().answers("GET /trees/T-2", 200, """
                {"treeId":"T-2","siteId":"S-MILL","tag":"2","mergedInto":null,
                 "merged":[{"treeId":"T-1","tag":"1","mergedAt":"2026-06-10T14:00:00Z"}],
                 "bands":[],
                 "history":[{"treeId":"T-1","afterMerge":true,"what":"girth measured","note":"1 m girth",
                             "happenedAt":"2026-06-11T14:00:00Z","recordedAt":"2026-06-11T14:00:00Z",
                             "by":"P-CREW","girthMm":1000}]}""");
        assertThat(desk.reads(Role.CREW, "/trees/T-1").getContentAsString()).contains("the same tree as", "T-2");
        assertThat(desk.reads(Role.CREW, "/trees/T-2").getContentAsString())
                .contains("Stands for", "(tag 1)", "fitted for T-1")
                .contains("written for T-1 after it became part of this tree");
    }
}

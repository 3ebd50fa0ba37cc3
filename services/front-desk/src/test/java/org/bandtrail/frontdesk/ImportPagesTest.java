package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import org.bandtrail.frontdesk.people.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockMultipartFile;

/** A tree list on its way in: the file, its columns, and how far a large one is. */
class ImportPagesTest {
    private final RunningDesk desk = RunningDesk.fresh();

    @BeforeEach
    void recordedSites() {
        desk.services().recorded("GET /sites", "sites.json");
    }

    @Test
    void a_file_goes_on_as_it_is_and_its_columns_are_filled_in_from_their_names() throws Exception {
        desk.services().answers("POST /tree-imports/files", 200, """
                {"fileId":"FILE-1","columns":["ref","dbh_cm"],"notes":["The file has 2 sheets; the first one is read."],
                 "proposal":{"tagColumn":"ref","dbhColumn":"dbh_cm","unit":"cm"},"sample":[["17","39.5"]]}""");
        String page = desk.mvc()
                .perform(multipart("/import/columns")
                        .file(new MockMultipartFile("file", "trees.xlsx", null, new byte[] {'P', 'K', 3, 4, 5}))
                        .with(user(RunningDesk.signedIn(Role.DEPOT)))
                        .with(csrf()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page)
                .contains("trees.xlsx", "the first one is read")
                .contains("<option value=\"ref\" selected=\"selected\">")
                .contains("<option value=\"dbh_cm\" selected=\"selected\">")
                .contains("<option value=\"cm\" selected=\"selected\">", "name=\"fileId\" value=\"FILE-1\"");
    }

    @Test
    void a_large_list_leads_to_a_page_that_shows_how_far_it_is_and_asks_again_until_the_end() throws Exception {
        desk.services().answers("POST /tree-imports/IMP-1/store", 200, """
                {"stored":0,"total":200000,"finished":false}""");
        desk.services().answers("GET /tree-imports/IMP-1", 200, """
                {"importId":"IMP-1","stored":null,"progress":{"done":5000,"total":200000},"leftOut":[]}""");
        assertThat(desk.mvc()
                        .perform(post("/import/IMP-1/store")
                                .param("commandId", "019a0000-0000-7000-8000-0000000000c9")
                                .with(user(RunningDesk.signedIn(Role.DEPOT)))
                                .with(csrf()))
                        .andReturn()
                        .getResponse()
                        .getRedirectedUrl())
                .isEqualTo("/import/IMP-1");
        var running = desk.reads(Role.DEPOT, "/import/IMP-1");
        assertThat(running.getHeader("Refresh")).isEqualTo("3");
        assertThat(running.getContentAsString()).contains("5,000", "200,000", "<progress");

        desk.services().answers("GET /tree-imports/IMP-1", 200, """
                {"importId":"IMP-1","stored":199999,"progress":{"done":199999,"total":200000},"leftOut":["S-1-17"]}""");
        var done = desk.reads(Role.DEPOT, "/import/IMP-1");
        assertThat(done.getHeader("Refresh")).isNull();
        assertThat(done.getContentAsString()).contains("199,999", "/trees/S-1-17");
    }
}

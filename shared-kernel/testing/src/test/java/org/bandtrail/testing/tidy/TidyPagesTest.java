package org.bandtrail.testing.tidy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Pages for people, the list of exceptions, and where the tree begins. */
class TidyPagesTest extends TidyTree {

    @Test
    void a_link_that_leads_nowhere_is_named() throws IOException {
        write("shared-kernel/notes.md", "See [the map](../README.md) and [the rest](rest.md \"all of it\").\n");

        assertOnlyComplaint("link: shared-kernel/notes.md", "[rest.md] leads nowhere");
    }

    @Test
    void a_room_that_is_not_on_the_map_is_named() throws IOException {
        write("services/inspections/notes.md", "# Visits\n");

        assertOnlyComplaint("map: README.md", "the map lacks services/inspections");
    }

    @Test
    void a_room_that_is_only_on_the_map_is_named() throws IOException {
        write("README.md", "| `shared-kernel/` | all |\n| `services/stock` | done |\n| `services/attic` | empty |\n");

        assertOnlyComplaint("map: README.md", "shows services/attic, which is not there");
    }

    @Test
    void a_readme_without_a_map_is_named() throws IOException {
        write("README.md", "# Stock\n");

        assertOnlyComplaint("map: README.md", "there is no map");
    }

    @Test
    void an_exception_excuses_up_to_its_size_and_no_further() throws IOException {
        write(REEL + "Long.java", "package stock.reels;\n" + "// a line\n".repeat(209));
        String reason = "| a table of published values";

        assertThat(complaints("# why", "file | " + REEL + "Long.java | 210 " + reason))
                .isEmpty();
        assertThat(complaints("file | " + REEL + "** | 210 " + reason)).isEmpty();
        assertThat(complaints("file | " + REEL + "Long.java | 209 " + reason))
                .hasSize(2)
                .anyMatch(complaint -> complaint.contains("210 lines"))
                .anyMatch(complaint -> complaint.contains("tidy now or worse than excused"));
    }

    @Test
    void an_exception_that_excuses_nothing_or_gives_no_reason_is_a_complaint() {
        assertThat(complaints("file | " + REEL + "Reel.java | 210 | a table of published values"))
                .singleElement()
                .asString()
                .contains("is tidy now");
        assertThatThrownBy(() -> complaints("file | " + REEL + "Reel.java | 210 | long"))
                .hasMessageContaining("is not rule | path | size | reason");
    }

    @Test
    void the_root_is_found_from_below() throws IOException {
        write(".mvn/jvm.config", "-Xmx1g\n");

        assertThat(SourceTree.rootAround(root.resolve("services/stock"))).isEqualTo(root.toAbsolutePath());
    }

    @Test
    void a_folder_of_the_top_level_is_on_the_map() throws IOException {
        write("demo-data/trees.csv", "tree\n");

        assertOnlyComplaint("map: README.md", "the map lacks demo-data");
    }
}

package org.bandtrail.testing.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** Each test makes one thing untidy in the code and sees exactly that complaint. */
class TidyRulesTest extends TidyTree {
    @Test
    void the_tidy_tree_is_tidy() {
        assertThat(complaints()).isEmpty();
    }

    @Test
    void a_file_above_its_budget_is_named_with_its_lines() throws IOException {
        write(REEL + "Long.java", "package stock.reels;\n" + "// a line\n".repeat(200));

        assertOnlyComplaint("file: " + REEL + "Long.java", "201 lines, budget 200");
    }

    @Test
    void a_line_above_its_budget_is_shown_unless_it_holds_an_address() throws IOException {
        write(REEL + "Wide.java", "// " + "x".repeat(118) + "\n// https://" + "x".repeat(118) + "\n");

        assertOnlyComplaint("line: " + REEL + "Wide.java", "1 lines above 120");
    }

    @Test
    void a_package_above_its_budget_is_two_features() throws IOException {
        for (int i = 0; i < 25; i++) {
            write(REEL + "Reel" + i + ".java", "record Reel" + i + "() {}\n");
        }

        assertOnlyComplaint("package: services/stock/src/main/java/stock/reels", "26 files, budget 25");
    }

    @Test
    void a_method_above_its_budget_is_named() throws IOException {
        write(REEL + "Slow.java", "class Slow {\n    void turn() {\n" + "        turn();\n".repeat(39) + "    }\n}\n");

        assertOnlyComplaint("method: " + REEL + "Slow.java", "turn has 41 lines, budget 40");
    }

    @Test
    void an_exception_that_is_caught_and_dropped_is_named() throws IOException {
        write(
                REEL + "Deaf.java",
                "class Deaf {\n    void turn() {\n        try {\n            turn();\n        } catch (Error e) {\n"
                        + "            // nobody hears\n        }\n    }\n}\n");

        assertOnlyComplaint("catch: " + REEL + "Deaf.java", "line 5 catches and drops");
    }

    @Test
    void what_is_left_behind_is_named_unless_it_has_an_issue() throws IOException {
        write("services/stock/later.md", "TO" + "DO count reels\nTO" + "DO #12 count reels\n");

        assertOnlyComplaint("leftover: services/stock/later.md", "line 1 has a note to oneself");
    }

    @Test
    void paths_of_one_machine_and_halves_of_a_merge_are_left_behind_too() throws IOException {
        write("services/stock/start", "cd /ro" + "ot/stock\ncd ./root/stock\n" + "<".repeat(7) + " HEAD\n");

        assertThat(complaints())
                .hasSize(2)
                .allSatisfy(complaint -> assertThat(complaint).startsWith("leftover"));
    }

    @Test
    void a_test_nobody_runs_is_named() throws IOException {
        String test = "class ReelChecks {\n    @Te" + "st\n    void a_reel() {}\n}\n";
        write("services/stock/src/test/java/stock/reels/ReelChecks.java", test);
        write("services/stock/src/test/java/stock/reels/ReelJourney.java", test);
        write("services/stock/src/test/java/stock/reels/ReelSuite.java", "abstract " + test);

        assertOnlyComplaint("test-name: services/stock/src/test/java/stock/reels/ReelChecks.java", "never run");
    }

    @Test
    void a_package_without_three_sentences_is_named() throws IOException {
        write(REEL + "package-info.java", packageInfo("Reels. They have a length"));
        assertOnlyComplaint("package-info: services/stock/src/main/java/stock/reels", "says 1 sentences");

        Files.delete(root.resolve(REEL + "package-info.java"));
        assertOnlyComplaint("package-info: services/stock/src/main/java/stock/reels", "has no package-info.java");
    }

    @Test
    void a_package_of_tests_alone_needs_its_text_too() throws IOException {
        write("services/stock/src/test/java/stock/journeys/ReelJourney.java", "class ReelJourney {}\n");

        assertOnlyComplaint("package-info: services/stock/src/test/java/stock/journeys", "has no package-info.java");
    }

    @Test
    void two_migrations_of_one_number_are_both_named() throws IOException {
        write("services/stock/src/main/resources/db/stock/V10__bag.sql", "CREATE TABLE bag (mm bigint);\n");

        assertThat(complaints())
                .hasSize(2)
                .allSatisfy(complaint -> assertThat(complaint).startsWith("migration: "));
    }
}

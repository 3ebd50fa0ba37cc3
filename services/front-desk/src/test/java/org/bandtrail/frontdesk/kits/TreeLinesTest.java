package org.bandtrail.frontdesk.kits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Map;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.junit.jupiter.api.Test;

class TreeLinesTest {
    private final TreeLines girths = lines(true);

    @Test
    void a_scanned_tree_gets_the_girth_the_books_know() {
        assertThat(girths.read("t-1301\n\n")).containsExactly(Map.of("treeId", "T-1301", "girth", "1260 mm"));
    }

    @Test
    void a_written_girth_counts_more_than_the_books_and_a_bare_number_gets_the_unit() {
        assertThat(girths.read("T-1301 1300\nT-2;4 ft 1 1/4 in\nT-3,\t90 cm"))
                .containsExactly(
                        Map.of("treeId", "T-1301", "girth", "1300 mm"),
                        Map.of("treeId", "T-2", "girth", "4 ft 1 1/4 in"),
                        Map.of("treeId", "T-3", "girth", "90 cm"));
    }

    @Test
    void two_bands_are_written_behind_the_tree() {
        assertThat(girths.read("T-1301 x2\nT-2 900 mm x3"))
                .containsExactly(
                        Map.of("treeId", "T-1301", "girth", "1260 mm", "bands", 2),
                        Map.of("treeId", "T-2", "girth", "900 mm", "bands", 3));
    }

    @Test
    void ready_lengths_of_tape_go_with_the_girth_if_the_books_know_it() {
        assertThat(lines(false).read("T-1301 1400\nT-2 900"))
                .containsExactly(
                        Map.of("treeId", "T-1301", "tape", "1400 mm", "girth", "1260 mm"),
                        Map.of("treeId", "T-2", "tape", "900 mm"));
    }

    @Test
    void a_tree_nobody_measured_and_an_empty_list_are_asked_for() {
        assertThatExceptionOfType(UnfitForm.class)
                .isThrownBy(() -> girths.read("T-9"))
                .withMessageContaining("[T-9]");
        assertThatExceptionOfType(UnfitForm.class)
                .isThrownBy(() -> girths.read(" \n"))
                .withMessageContaining("empty");
    }

    private static TreeLines lines(boolean girths) {
        return new TreeLines(girths, "mm", tree -> tree.equals("T-1301") ? 1_260L : null);
    }
}

package org.bandtrail.siteinstalls.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.LengthUnit;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.GirthBasis;
import org.bandtrail.siteinstalls.policies.PolicySamples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreviewingTest {
    private static final Register ALDER_WITH_TREE_9 = new Register() {
        @Override
        public boolean hasSite(SiteId siteId) {
            return siteId.value().equals("ALDER");
        }

        @Override
        public Set<TreeId> taken(Collection<TreeId> trees) {
            Set<TreeId> taken = new HashSet<>(trees);
            taken.retainAll(Set.of(new TreeId("ALDER-9")));
            return taken;
        }
    };
    private static final Mapping MAPPING = new Mapping(
            null, "Site", "Tag", "Species", "DBH", GirthBasis.DIAMETER, LengthUnit.CENTIMETRE, "Date", List.of());

    private static Preview of(String file) {
        return of(file.getBytes(StandardCharsets.UTF_8));
    }

    private static Preview of(byte[] file) {
        return Previewing.of(file, MAPPING, ALDER_WITH_TREE_9, PolicySamples.USUAL.girth());
    }

    private static Preview row(String row) {
        return of("Site,Tag,Species,DBH,Date\n" + row + "\n");
    }

    @Test
    void a_good_row_is_ready_as_written() {
        Preview preview = row("alder, 17 ,\"tree, of \"\"heaven\"\"\",39.5,2026-03-10");
        assertThat(preview.problems()).isEmpty();
        assertThat(preview.ready()).singleElement().satisfies(tree -> {
            assertThat(tree.row()).isEqualTo(2);
            assertThat(tree.treeId()).isEqualTo(new TreeId("ALDER-17"));
            assertThat(tree.tag()).isEqualTo("17");
            assertThat(tree.species()).isEqualTo("tree, of \"heaven\"");
            assertThat(tree.girth().text()).isEqualTo("39.5 cm");
            // pi x 395 mm = 1240.93
            assertThat(tree.girth().girth().mm()).isEqualTo(1241);
            assertThat(tree.measured()).isEqualTo(LocalDate.parse("2026-03-10"));
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "alder,,x,39,2026-03-10 | Tag | The tag is missing.",
                "alder,17,x,,2026-03-10 | DBH | The diameter is missing.",
                "alder,17,x,thick,2026-03-10 | DBH | This is no diameter.",
                "alder,17,x,0,2026-03-10 | DBH | This is no diameter.",
                "alder,17,x,39,10.3.2026 | Date | This is no date.",
                ",17,x,39,2026-03-10 | Site | This names no site.",
                "birch,17,x,39,2026-03-10 | Site | Site BIRCH is not registered.",
                "alder,9,x,39,2026-03-10 | Tag | Tree ALDER-9 is registered already.",
                "alder,17,x,39 | '' | The row has 4 fields, the header 5.",
                "alder,17,x,39,2026-03-10,more | '' | The row has 6 fields, the header 5."
            })
    void a_problem_names_row_and_column(String row, String column, String problem) {
        Preview preview = row(row);
        assertThat(preview.ready()).isEmpty();
        assertThat(preview.problems()).singleElement().satisfies(told -> {
            assertThat(told.row()).isEqualTo(2);
            assertThat(told.column()).isEqualTo(column);
            assertThat(told.problem()).isEqualTo(problem);
            assertThat(told.advice()).isNotBlank();
        });
    }

    @Test
    void a_row_with_three_problems_tells_all_three() {
        assertThat(row("alder,,x,thick,soon").problems())
                .extracting(ImportProblem::column)
                .containsExactly("Tag", "DBH", "Date");
    }

    @Test
    void the_second_of_two_equal_tags_names_the_row_of_the_first() {
        Preview preview = row("alder,17,x,39,\nalder,18,x,39,\nalder, 17,x,40,");
        assertThat(preview.ready()).hasSize(2);
        assertThat(preview.problems()).singleElement().satisfies(told -> {
            assertThat(told.row()).isEqualTo(4);
            assertThat(told.problem()).startsWith("Row 2 has this tag");
        });
    }

    @Test
    void rows_are_numbered_as_a_spreadsheet_does_with_blank_rows_and_line_ends_in_values() {
        Preview preview = row("alder,17,\"two\nlines\",39,\n\nalder,,x,39,");
        assertThat(preview.rowCount()).isEqualTo(2);
        assertThat(preview.problems()).extracting(ImportProblem::row).containsExactly(4);
    }

    @Test
    void a_doubtful_size_is_a_question_and_the_row_stays_ready() {
        Preview preview = row("alder,17,x,390,");
        assertThat(preview.ready()).hasSize(1);
        assertThat(preview.questions()).singleElement().satisfies(question -> {
            assertThat(question.value()).isEqualTo("390 cm");
            assertThat(question.perhaps()).isEqualTo("390 cm as girth");
        });
    }

    @Test
    void a_unit_in_the_value_wins_over_the_unit_of_the_column() {
        // 6 in of diameter are 479 mm of girth.
        assertThat(row("alder,17,x,6 in,").ready())
                .singleElement()
                .satisfies(tree -> assertThat(tree.girth().girth().mm()).isEqualTo(479));
    }

    @Test
    void byte_order_marks_office_encodings_and_semicolons_are_read() {
        String file = "Site;Tag;Species;DBH;Date\nalder;17;érable;39,5;\n";
        byte[] marked = ("\uFEFF" + file).getBytes(StandardCharsets.UTF_8);
        byte[] wide = ("\uFEFF" + file).getBytes(StandardCharsets.UTF_16LE);
        byte[] office = file.getBytes(Charset.forName("windows-1252"));
        for (byte[] bytes : List.of(marked, wide, office)) {
            Preview preview = of(bytes);
            assertThat(preview.problems()).isEmpty();
            assertThat(preview.columns()).startsWith("Site");
            assertThat(preview.ready())
                    .singleElement()
                    .satisfies(tree -> assertThat(tree.species()).isEqualTo("érable"));
        }
        assertThat(of(marked).notes()).isEmpty();
        assertThat(of(office).notes()).singleElement().asString().contains("Windows-1252");
    }

    @Test
    void a_column_the_file_does_not_have_is_refused_with_those_it_has() {
        assertThatThrownBy(() -> of("Site,Tag,Species,Girth,Date\n"))
                .isInstanceOf(ImportRefused.ColumnMissing.class)
                .hasMessageContaining("[DBH]")
                .hasMessageContaining("Girth");
    }

    @Test
    void what_is_no_table_is_refused() {
        assertThatThrownBy(() -> of("")).isInstanceOf(ImportRefused.FileUnreadable.class);
        assertThatThrownBy(() -> of("\n\n")).isInstanceOf(ImportRefused.FileUnreadable.class);
        assertThatThrownBy(() -> row("alder,17,\"x\" y,39,"))
                .isInstanceOf(ImportRefused.FileUnreadable.class)
                .hasMessageContaining("row 2");
    }

    @Test
    void conditions_choose_rows_and_are_spelt_column_equals_value() {
        assertThat(Mapping.Condition.parse("Status_2026=LI & In_Plot=TRUE"))
                .containsExactly(new Mapping.Condition("Status_2026", "LI"), new Mapping.Condition("In_Plot", "TRUE"));
        assertThatThrownBy(() -> Mapping.Condition.parse("Status")).hasMessageContaining("[Status]");
    }
}

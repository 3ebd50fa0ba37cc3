package org.bandtrail.siteinstalls.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.LengthUnit;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.GirthBasis;
import org.bandtrail.siteinstalls.policies.PolicySamples;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * The real inventory beside this test (source and licence in {@code trees/SOURCE.txt}). The expected figures were
 * counted with Python's csv module and {@code round(math.pi * 10 * dbh)}, not with this code.
 */
class ForestInventoryTest {
    private static final Register EMPTY = new Register() {
        @Override
        public boolean hasSite(SiteId siteId) {
            return true;
        }

        @Override
        public Set<TreeId> taken(Collection<TreeId> trees) {
            return Set.of();
        }
    };
    private static final Mapping LIVING_2026 = new Mapping(
            null,
            "Plot",
            "Tree_ID",
            "Species_code",
            "DBH_2026",
            GirthBasis.DIAMETER,
            LengthUnit.CENTIMETRE,
            "Date_2026",
            Mapping.Condition.parse("Status_2026=LI"));

    private static Preview preview() throws IOException {
        try (@Nullable
                InputStream file = ForestInventoryTest.class.getResourceAsStream("/trees/forest-plot-inventory.csv")) {
            assertThat(file).isNotNull();
            return Previewing.of(file.readAllBytes(), LIVING_2026, EMPTY, PolicySamples.USUAL.girth());
        }
    }

    @Test
    void of_533_trees_410_live_in_2026_and_404_of_those_were_measured() throws IOException {
        Preview preview = preview();
        assertThat(preview.rowCount()).isEqualTo(533);
        assertThat(preview.selected()).isEqualTo(410);
        assertThat(preview.ready()).hasSize(404);
        assertThat(preview.columns()).hasSize(32);
    }

    @Test
    void the_six_living_trees_without_a_diameter_are_told_by_row_and_column() throws IOException {
        assertThat(preview().problems())
                .hasSize(6)
                .allSatisfy(problem -> {
                    assertThat(problem.column()).isEqualTo("DBH_2026");
                    assertThat(problem.problem()).isEqualTo("The diameter is missing.");
                })
                .extracting(ImportProblem::row)
                .isSorted();
    }

    @Test
    void the_girths_are_pi_times_the_diameters() throws IOException {
        List<ReadyTree> ready = preview().ready();
        assertThat(ready.stream().mapToLong(tree -> tree.girth().girth().mm()).sum())
                .isEqualTo(272_818);
        // Tree 1304: 53.3 cm of diameter, pi x 533 mm = 1674.47 mm.
        assertThat(ready)
                .filteredOn(tree -> tree.tag().equals("1304"))
                .singleElement()
                .satisfies(tree -> {
                    assertThat(tree.treeId()).isEqualTo(new TreeId("CONTROL-1304"));
                    assertThat(tree.girth().girth().mm()).isEqualTo(1674);
                });
    }

    @Test
    void each_trunk_below_six_inches_of_diameter_is_a_question() throws IOException {
        // 198 of the 404 have less than 479 mm of girth before rounding, as Python counts.
        assertThat(preview().questions()).hasSize(198);
    }
}

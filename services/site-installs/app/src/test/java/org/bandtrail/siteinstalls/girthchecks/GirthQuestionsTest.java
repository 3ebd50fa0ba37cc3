package org.bandtrail.siteinstalls.girthchecks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.girths.GirthDoubt;
import org.bandtrail.siteinstalls.girths.GirthLimits;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.bandtrail.siteinstalls.species.Species;
import org.bandtrail.siteinstalls.species.SpeciesBook;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class GirthQuestionsTest {
    private static final GirthLimits LIMITS = new GirthLimits(Length.ofMm(479), Length.ofMm(6000), 250);
    private static final SpeciesBook BOOK = new SpeciesBook(
            1,
            LocalDate.EPOCH,
            "the test",
            "the test",
            List.of(),
            List.of(new Species(
                    new EppoCode("RHUTY"),
                    "the test",
                    "Rhus typhina",
                    List.of("staghorn sumac"),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    1300,
                    "the test")));

    private static TreeView tree(String species, @Nullable String code, @Nullable Long girthMm) {
        return new TreeView(
                "OAK-1", "OAK", "1", species, code, null, null, girthMm, null, null, "", null, null, 0, null, null);
    }

    private static List<String> asked(String girth, @Nullable TreeView tree) {
        return GirthQuestions.about(WrittenGirth.ofGirth(girth), tree, LIMITS, BOOK).stream()
                .map(GirthDoubt::message)
                .toList();
    }

    @Test
    void a_girth_beyond_what_its_kind_reaches_is_asked_about_and_the_slip_is_named() {
        assertThat(asked("55 in", tree("", "RHUTY", null)))
                .singleElement()
                .asString()
                .contains("no trunk of staghorn sumac is known above")
                .contains("Perhaps it is");
        assertThat(asked("1300 mm", tree("Staghorn sumac", null, null))).isEmpty();
        assertThat(asked("1301 mm", tree("Staghorn sumac", null, null))).hasSize(1);
        assertThat(asked("1301 mm", tree("oak", null, null))).isEmpty();
    }

    @Test
    void the_girth_before_counts_first() {
        assertThat(asked("78 ft", tree("", "RHUTY", 1980L)))
                .singleElement()
                .asString()
                .contains("the last girth measured on this tree")
                .contains("78 in");
        assertThat(asked("1990 mm", tree("oak", null, 1980L))).isEmpty();
    }

    @Test
    void a_new_tree_is_asked_about_as_any_trunk() {
        assertThat(asked("1200 mm", null)).isEmpty();
        assertThat(asked("78 ft", null)).hasSize(1);
    }
}

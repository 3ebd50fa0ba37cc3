package org.bandtrail.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.importer.ImportOption;
import org.bandtrail.testing.broken.circle.CircleApplication;
import org.bandtrail.testing.broken.neighbour.bands.LonelyApplication;
import org.bandtrail.testing.broken.nested.NestedApplication;
import org.bandtrail.testing.sound.SoundApplication;
import org.junit.jupiter.api.Test;

/** Modulith accepts flat features and the two doors, and sees circles and nested packages. */
class ModulesTest {
    private static final ImportOption TESTS = new ImportOption.OnlyIncludeTests();

    @Test
    void flat_features_and_doors_are_modules() {
        assertThat(Modules.verify(SoundApplication.class, TESTS)).containsExactly("published", "received", "reels");
    }

    @Test
    void a_circle_is_refused() {
        assertThatThrownBy(() -> Modules.verify(CircleApplication.class, TESTS))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("Cycle detected: Slice reels")
                .hasMessageContaining("CircleApplication");
    }

    @Test
    void reaching_below_a_neighbour_is_refused() {
        assertThatThrownBy(() -> Modules.verify(NestedApplication.class, TESTS))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("non-exposed type")
                .hasMessageContaining("below.Core");
    }

    @Test
    void an_application_without_modules_is_refused() {
        assertThatThrownBy(() -> Modules.verify(LonelyApplication.class, TESTS))
                .hasMessageContaining("no package below");
    }
}

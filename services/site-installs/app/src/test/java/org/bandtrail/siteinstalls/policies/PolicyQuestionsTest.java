package org.bandtrail.siteinstalls.policies;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.policies.PolicyQuestions.Question;
import org.junit.jupiter.api.Test;

class PolicyQuestionsTest {
    private static final List<ValueGuide> GUIDES = ValueGuide.read();
    private static final CutLengths USUAL = PolicySamples.USUAL;

    private static List<Question> asked(
            CutLengths.TapeRule tape, CutLengths.MeshRule mesh, CutLengths.SetupRule setup) {
        CutLengths values = new CutLengths(
                tape, mesh, USUAL.fasteners(), USUAL.height(), USUAL.girth(), setup, 150, USUAL.lateAfterDays());
        return PolicyQuestions.about(values, GUIDES);
    }

    private static CutLengths.MeshRule mesh(long extra, long standOff, long opening) {
        return new CutLengths.MeshRule(Length.ofMm(extra), Length.ofMm(standOff), Length.ofMm(opening));
    }

    @Test
    void the_values_a_house_begins_with_raise_no_question() throws java.io.IOException {
        assertThat(PolicyQuestions.about(CutPolicyWiring.Defaults.read().values(), GUIDES))
                .isEmpty();
    }

    @Test
    void an_overlap_of_2_millimetres_is_perhaps_2_inches() {
        CutLengths.TapeRule tape = new CutLengths.TapeRule(Length.ofMm(2), Length.ofMm(19), Length.ofMm(127));
        assertThat(asked(tape, USUAL.mesh(), USUAL.setup())).singleElement().satisfies(question -> {
            assertThat(question.field()).isEqualTo("tapeOverlapMm");
            // 2 x 25.4 = 50.8 (exact factor, NIST SP 811)
            assertThat(question.perhaps()).isEqualTo("51 mm");
            assertThat(question.message()).contains("inches typed as millimetres");
        });
    }

    @Test
    void an_opening_of_an_inch_is_perhaps_half_of_it() {
        assertThat(asked(USUAL.tape(), mesh(229, 25, 25), USUAL.setup()))
                .singleElement()
                .satisfies(question -> {
                    assertThat(question.field()).isEqualTo("meshWidestOpeningMm");
                    assertThat(question.perhaps()).isEqualTo("13 mm");
                });
    }

    @Test
    void a_guard_that_could_not_stand_off_as_far_as_asked_is_named() {
        // By hand: (152 - 0) / (2 pi) = 24.2 mm, one short of 25; 2 pi x 25 = 157.08, so 158 mm longer would do.
        assertThat(asked(USUAL.tape(), mesh(152, 25, 13), USUAL.setup()))
                .singleElement()
                .satisfies(question -> {
                    assertThat(question.field()).isEqualTo("meshExtraMm");
                    assertThat(question.perhaps()).isEqualTo("158 mm");
                });
    }

    @Test
    void a_policy_without_a_guard_is_asked_about() {
        CutLengths.SetupRule bare = new CutLengths.SetupRule(
                1, Length.ofMm(127), CutLengths.GuardType.NONE, Length.ofMm(50), Length.ZERO, true);
        assertThat(asked(USUAL.tape(), USUAL.mesh(), bare))
                .singleElement()
                .satisfies(question -> assertThat(question.field()).isEqualTo("guardType"));
    }

    @Test
    void every_value_of_the_policy_has_a_guide_with_its_source() {
        assertThat(GUIDES.stream().map(ValueGuide::name))
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(CutPolicyView.Values.class.getRecordComponents())
                        .map(component -> component.getName())
                        .toList());
        assertThat(GUIDES).allSatisfy(guide -> assertThat(guide.source()).isNotBlank());
    }
}

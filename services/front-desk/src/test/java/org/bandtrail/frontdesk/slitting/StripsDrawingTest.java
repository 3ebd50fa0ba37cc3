package org.bandtrail.frontdesk.slitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Strips side by side, to scale. */
class StripsDrawingTest {

    @Test
    void strips_and_trim_fill_the_reel_to_scale() {
        // By hand: 680 pixels for 340 mm are 2 pixels a millimetre.
        StripsDrawing drawing =
                StripsDrawing.of(340, List.of(new StripsDrawing.Strip("A", 127), new StripsDrawing.Strip("B", 127)));

        assertThat(drawing.parts())
                .extracting(StripsDrawing.Part::x, StripsDrawing.Part::width, StripsDrawing.Part::look)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("0.0", "254.0", "strip"),
                        org.assertj.core.groups.Tuple.tuple("254.0", "254.0", "strip"),
                        org.assertj.core.groups.Tuple.tuple("508.0", "172.0", "trim"));
        assertThat(drawing.edge()).isEqualTo("680.0");
    }

    @Test
    void nothing_left_over_draws_no_trim() {
        assertThat(StripsDrawing.of(127, List.of(new StripsDrawing.Strip("A", 127)))
                        .parts())
                .extracting(StripsDrawing.Part::look)
                .containsExactly("strip");
    }

    @Test
    void strips_wider_than_the_reel_stand_out_over_its_edge() {
        // By hand: 200 mm of strips on 100 mm of reel: the edge is in the middle of 680 pixels.
        StripsDrawing drawing = StripsDrawing.of(100, List.of(new StripsDrawing.Strip("A", 200)));

        assertThat(drawing.edge()).isEqualTo("340.0");
        assertThat(drawing.parts())
                .singleElement()
                .satisfies(part -> assertThat(part.width()).isEqualTo("680.0"));
    }

    @Test
    void a_narrow_trim_carries_no_words() {
        assertThat(StripsDrawing.of(390, List.of(new StripsDrawing.Strip("A", 381)))
                        .parts()
                        .getLast()
                        .roomy())
                .isFalse();
    }

    @Test
    void a_reel_without_width_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StripsDrawing.of(0, List.of()))
                .withMessageContaining("0 mm wide");
    }
}

package org.bandtrail.siteinstalls.devices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.policies.PolicySamples;
import org.junit.jupiter.api.Test;

class PieceListTest {
    private static final DeviceKinds KINDS = new DeviceKinds();

    private static PieceList list(String code, long girth) {
        return PieceList.of(
                KINDS.named(code).orElseThrow(), Length.ofMm(girth), PolicySamples.USUAL, TapeMeasure.METRIC);
    }

    private static NeededPiece piece(String code, long girth, DevicePart.Role role) {
        return list(code, girth).in(role).orElseThrow();
    }

    @Test
    void a_sticky_band_takes_what_the_cut_length_formulas_say() {
        // By hand: 1234 + 50 + 2 x 19 = 1322, up to 1325; 1234 + 229 = 1463, up to 1465; 1234 / 150 = 8.2, so 9.
        assertThat(piece("sticky-band", 1234, DevicePart.Role.AROUND).length()).isEqualTo(Length.ofMm(1325));
        assertThat(piece("sticky-band", 1234, DevicePart.Role.GUARD).length()).isEqualTo(Length.ofMm(1465));
        assertThat(piece("sticky-band", 1234, DevicePart.Role.PINS).pieces()).isEqualTo(Pieces.of(9));
    }

    @Test
    void window_screen_goes_one_and_a_half_times_round_the_tree() {
        // Published how-to: about 1.5 x round the tree. By hand: 1.5 x 1233 = 1849.5, up to 1850.
        NeededPiece screen = piece("screen-band", 1233, DevicePart.Role.GUARD);
        assertThat(screen.length()).isEqualTo(Length.ofMm(1850));
        assertThat(screen.formula()).isEqualTo("girth 1233 x 1.5 = 1850, rounded up to 1850 mm");
    }

    @Test
    void a_funnel_trap_takes_a_skirt_and_one_funnel_and_nothing_sticky() {
        PieceList trap = list("funnel-trap", 1000);
        assertThat(trap.in(DevicePart.Role.OTHER).orElseThrow().pieces()).isEqualTo(Pieces.of(1));
        assertThat(trap.pieces()).noneMatch(piece -> piece.part().material() == MaterialKind.TAPE);
    }

    @Test
    void every_piece_is_a_length_or_a_count_and_never_shorter_than_the_trunk() {
        for (DeviceKind kind : KINDS.all()) {
            for (long girth : new long[] {1, 479, 1001, 6000}) {
                assertThat(list(kind.code(), girth).pieces()).allSatisfy(piece -> {
                    assertThat(piece.length() == null).isNotEqualTo(piece.pieces() == null);
                    assertThat(piece.length() == null || piece.length().mm() >= girth)
                            .as(kind.code() + " " + piece.part().name())
                            .isTrue();
                });
            }
        }
    }

    @Test
    void every_kind_says_where_it_is_described_and_what_to_be_careful_of() {
        assertThat(KINDS.all())
                .extracting(DeviceKind::code)
                .doesNotHaveDuplicates()
                .hasSize(5);
        assertThat(KINDS.all()).allSatisfy(kind -> {
            assertThat(kind.source()).isNotBlank();
            assertThat(kind.cautions()).isNotEmpty();
            assertThat(kind.parts())
                    .allSatisfy(part -> assertThat(part.source()).isNotBlank());
        });
        assertThat(KINDS.named("sticky-band-alone").orElseThrow().question()).contains("guard");
    }

    @Test
    void a_girth_of_nothing_is_refused_by_name() {
        assertThatThrownBy(() -> list("sticky-band", 0)).hasMessageContaining("girth");
    }

    @Test
    void a_kind_that_needs_a_guard_lists_one() {
        DevicePart tape = KINDS.named("sticky-band-alone").orElseThrow().parts().getFirst();
        assertThatThrownBy(() -> new DeviceKind("x", "x", "x", List.of(tape), true, false, null, "x", List.of()))
                .hasMessageContaining("lists none");
        assertThatThrownBy(() -> new DeviceKind("x", "x", "x", List.of(tape, tape), false, false, null, "x", List.of()))
                .hasMessageContaining("round the trunk");
    }
}

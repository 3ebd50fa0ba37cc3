package org.bandtrail.siteinstalls.guards;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GuardDoubtTest {
    private static final GuardRule RULE = new GuardRule(Length.ofMm(25), Length.ofMm(13), Length.ofMm(1), true);
    private static final Openings OPENINGS =
            new Openings(List.of(new Opening("a wren", 25, "sample"), new Opening("a mouse", 13, "sample")));

    private static GuardSheet sheet(long length, long seam, long girth, long width, long opening, boolean closed) {
        return new GuardSheet(
                Length.ofMm(length),
                Length.ofMm(seam),
                Length.ofMm(girth),
                Length.ofMm(width),
                Length.ofMm(127),
                Length.ofMm(opening),
                closed);
    }

    private static List<String> messages(GuardSheet sheet) {
        return GuardDoubt.about(sheet, RULE, OPENINGS).stream()
                .map(GuardDoubt::message)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        // Worked out by hand: (L - s - g) / 6.2832. 6 in extra: 152 / 6.2832 = 24.2; 12 in: 305 / 6.2832 = 48.5.
        "1152, 0,  1000, 24",
        "1305, 0,  1000, 49",
        // 152 - 50 = 102; 102 / 6.2832 = 16.2
        "1152, 50, 1000, 16",
        "1000, 0,  1000, 0",
        // 950 - 1000 = -50; -50 / 6.2832 = -7.96
        "950,  0,  1000, -8",
    })
    void a_sheet_stands_off_by_the_difference_of_two_radii(long length, long seam, long girth, long standOff) {
        assertThat(sheet(length, seam, girth, 300, 13, true).standOff()).isEqualTo(Length.ofMm(standOff));
    }

    @Test
    void a_good_guard_is_not_doubted() {
        assertThat(messages(sheet(1160, 0, 1000, 128, 13, true))).isEmpty();
    }

    @Test
    void a_guard_that_stands_too_near_names_both_figures_and_the_length_that_helps() {
        // By hand: 57 / 6.2832 = 9.07; 1000 + 2 x 3.14159 x 25 = 1157.08, rounded up 1158.
        assertThat(messages(sheet(1057, 0, 1000, 300, 13, true)))
                .containsExactly("The guard would come too close to the tape: it stands off 9 mm, the policy asks"
                        + " 25 mm. That takes 1158 mm of mesh.");
    }

    @Test
    void a_sheet_without_spare_length_touches_the_tape() {
        // The seam takes all there is to spare; 1000 + 60 + 157.08 = 1217.08, rounded up 1218.
        assertThat(messages(sheet(1060, 60, 1000, 300, 13, true)))
                .containsExactly("The guard would touch the tape: 1000 mm of mesh close round 1000 mm with nothing to"
                        + " spare. 1218 mm stand off 25 mm.");
    }

    @Test
    void an_opening_names_the_largest_animal_that_gets_through() {
        assertThat(messages(sheet(1160, 0, 1000, 300, 14, true)))
                .containsExactly("The mesh opens 14 mm; the policy asks 13 mm or less. A mouse gets through openings"
                        + " over 13 mm.");
        assertThat(messages(sheet(1160, 0, 1000, 300, 25, true)))
                .singleElement()
                .asString()
                .contains("A mouse");
        assertThat(messages(sheet(1160, 0, 1000, 300, 26, true)))
                .containsExactly("The mesh opens 26 mm; the policy asks 13 mm or less. A wren gets through openings"
                        + " over 25 mm.");
    }

    @Test
    void a_guard_as_narrow_as_the_tape_or_open_below_is_doubted() {
        assertThat(GuardDoubt.about(sheet(1160, 0, 1000, 127, 13, false), RULE, OPENINGS))
                .extracting(GuardDoubt::kind)
                .containsExactly(GuardDoubt.Kind.NARROW, GuardDoubt.Kind.OPEN_BELOW);
        GuardRule open = new GuardRule(Length.ofMm(25), Length.ofMm(13), Length.ofMm(1), false);
        assertThat(GuardDoubt.about(sheet(1160, 0, 1000, 128, 13, false), open, OPENINGS))
                .isEmpty();
    }

    @Test
    void what_nobody_told_is_not_doubted() {
        GuardSheet unknown = new GuardSheet(Length.ofMm(1160), Length.ZERO, Length.ofMm(1000), null, null, null, null);
        assertThat(messages(unknown)).isEmpty();
        assertThat(unknown.wider()).isNull();
    }

    @Test
    void the_openings_of_the_house_know_the_wren() {
        assertThat(Openings.house().largestThrough(Length.ofMm(26)))
                .get()
                .extracting(Opening::animal)
                .isEqualTo("a wren");
        assertThat(Openings.house().largestThrough(Length.ofMm(13))).isEmpty();
    }
}

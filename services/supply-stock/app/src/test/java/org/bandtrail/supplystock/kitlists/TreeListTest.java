package org.bandtrail.supplystock.kitlists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.TreeId;
import org.junit.jupiter.api.Test;

class TreeListTest {
    /** 2 in overlap, 3/4 in tabs, 9 in extra mesh: common practice, no source. */
    private static final KitRule RULE = rule();

    private static final Set<MaterialKind> ALL = EnumSet.allOf(MaterialKind.class);

    @Test
    void tape_mesh_and_fasteners_follow_from_the_girth() {
        TreeNeed need = needs(girth("T-1", 1_260)).getFirst();

        assertThat(need.tape()).isEqualTo(Length.ofMm(1_260 + 50 + 2 * 19));
        assertThat(need.mesh()).isEqualTo(Length.ofMm(1_260 + 229));
        assertThat(need.fasteners()).as("1260 / 150 rounded up").isEqualTo(Pieces.of(9));
    }

    @Test
    void a_thin_trunk_gets_the_fewest_fasteners_that_hold_a_band() {
        assertThat(needs(girth("T-1", 480)).getFirst().fasteners()).isEqualTo(Pieces.of(4));
        assertThat(needs(girth("T-1", 600)).getFirst().fasteners()).isEqualTo(Pieces.of(4));
        assertThat(needs(girth("T-1", 601)).getFirst().fasteners()).isEqualTo(Pieces.of(5));
    }

    @Test
    void a_given_length_counts_more_than_the_rule_and_two_bands_take_twice_the_fasteners() {
        TreeList.Line line =
                new TreeList.Line(new TreeId("T-1"), Length.ofMm(1_260), Length.ofMm(1_400), null, null, 2);

        TreeNeed need = needs(line).getFirst();

        assertThat(need.tape()).isEqualTo(Length.ofMm(1_400));
        assertThat(need.fasteners()).isEqualTo(Pieces.of(18));
        assertThat(need.cut(MaterialKind.TAPE)).isEqualTo(new Cut(new TreeId("T-1"), 2, Length.ofMm(1_400)));
    }

    @Test
    void a_kit_without_mesh_needs_none() {
        TreeNeed need = TreeList.needs(List.of(girth("T-1", 1_260)), RULE, Set.of(MaterialKind.TAPE))
                .getFirst();

        assertThat(need.mesh()).isEqualTo(Length.ZERO);
        assertThat(need.cut(MaterialKind.MESH)).isNull();
        assertThat(need.fasteners()).isEqualTo(Pieces.ZERO);
    }

    @Test
    void a_tree_without_girth_and_length_is_asked_for_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> needs(new TreeList.Line(new TreeId("T-7"), null, null, null, null, null)))
                .withMessageContaining("[T-7]")
                .withMessageContaining("tape length");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> needs(girth("T-8", 0)))
                .withMessageContaining("[T-8]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> needs(girth("T-1", 900), girth("T-1", 900)))
                .withMessageContaining("twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> needs(new TreeList.Line(new TreeId("T-1"), Length.ofMm(900), null, null, null, 10)))
                .withMessageContaining("1 to 9");
    }

    @Test
    void a_guard_without_extra_is_no_rule() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new KitRule(Length.ZERO, Length.ZERO, Length.ZERO, Length.ofMm(150), Pieces.of(4), "somebody"))
                .withMessageContaining("mesh extra");
    }

    @Test
    void the_youngest_version_that_is_valid_counts() {
        KitRules rules = new KitRules(List.of(version(1, "2000-01-01", 50), version(2, "2026-06-01", 60)));

        assertThat(rules.on(LocalDate.parse("2026-05-31")).rule().overlap()).isEqualTo(Length.ofMm(50));
        assertThat(rules.on(LocalDate.parse("2026-06-01")).rule().overlap()).isEqualTo(Length.ofMm(60));
        assertThatIllegalArgumentException().isThrownBy(() -> rules.on(LocalDate.parse("1999-12-31")));
    }

    private static KitRules.Version version(int number, String from, long overlap) {
        return new KitRules.Version(
                number, LocalDate.parse(from), "common practice", "for the test", overlap, 19, 229, 150, 4, 72);
    }

    private static KitRule rule() {
        return version(1, "2000-01-01", 50).rule();
    }

    private static TreeList.Line girth(String tree, int mm) {
        return new TreeList.Line(new TreeId(tree), Length.ofMm(mm), null, null, null, null);
    }

    private static List<TreeNeed> needs(TreeList.Line... lines) {
        return TreeList.needs(List.of(lines), RULE, ALL);
    }
}

package org.bandtrail.siteinstalls.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.bandtrail.siteinstalls.trees.TreeCommand.CorrectTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.MeasureGirth;
import org.bandtrail.siteinstalls.trees.TreeCommand.MergeTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.NoteFoundAgain;
import org.bandtrail.siteinstalls.trees.TreeCommand.NoteGone;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.UnmergeTree;
import org.bandtrail.siteinstalls.trees.TreeEvent.GirthMeasured;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeCorrected;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeMerged;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeRegistered;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeUnmerged;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TreeTest {
    private static final SiteId ALDER = new SiteId("ALDER");
    private static final TreeId TREE = new TreeId("ALDER-17");
    private static final PersonId PERSON = new PersonId("P-07");
    private static final EppoCode AILAL = new EppoCode("AILAL");
    private static final Point FENCE = new Point(404_400_000, -753_400_000);
    private static final Length BREAST = Length.ofMm(1370);
    private static final WrittenGirth DBH = WrittenGirth.ofDiameter("39 cm");

    private static Occurred on(String day) {
        return Occurred.at(Instant.parse(day + "T08:00:00Z"));
    }

    private static RegisterTree register(String tag, @Nullable WrittenGirth girth) {
        return new RegisterTree(
                TREE, ALDER, tag, "heaven", AILAL, FENCE, girth, BREAST, " by the gate ", PERSON, on("2026-03-01"));
    }

    private static MeasureGirth measure(String day, String girth) {
        return new MeasureGirth(TREE, WrittenGirth.ofGirth(girth), null, null, PERSON, on(day));
    }

    private static Tree after(TreeCommand... commands) {
        Tree tree = Tree.NONE;
        for (TreeCommand command : commands) {
            for (TreeEvent event : tree.decide(command)) {
                tree = tree.evolve(event);
            }
        }
        return tree;
    }

    @Test
    void a_tree_is_registered_with_its_first_girth() {
        // pi x 390 mm = 1225.2
        assertThat(Tree.NONE.decide(register(" 17 ", DBH)))
                .containsExactly(
                        new TreeRegistered(
                                TREE, ALDER, "17", "heaven", AILAL, FENCE, "by the gate", PERSON, on("2026-03-01")),
                        new GirthMeasured(TREE, Length.ofMm(1225), DBH, BREAST, null, PERSON, on("2026-03-01")));
    }

    @Test
    void a_tree_may_be_registered_without_a_girth() {
        assertThat(Tree.NONE.decide(register("17", null))).hasSize(1);
    }

    @Test
    void a_taken_identity_is_refused() {
        Tree tree = after(register("17", null));
        assertThatThrownBy(() -> tree.decide(register("17", null)))
                .isInstanceOf(TreeRefused.AlreadyRegistered.class)
                .hasMessageContaining("ALDER-17");
    }

    @Test
    void a_tag_of_40_characters_fits_and_one_more_is_refused() {
        assertThat(Tree.NONE.decide(register("1".repeat(40), null))).hasSize(1);
        assertThatThrownBy(() -> Tree.NONE.decide(register("1".repeat(41), null)))
                .isInstanceOf(TreeRefused.TagUnusable.class);
        assertThatThrownBy(() -> Tree.NONE.decide(register(" ", null))).isInstanceOf(TreeRefused.TagUnusable.class);
    }

    @Test
    void measuring_a_tree_nobody_registered_is_refused() {
        assertThatThrownBy(() -> Tree.NONE.decide(measure("2026-04-01", "1230 mm")))
                .isInstanceOf(TreeRefused.NotRegistered.class)
                .hasMessageContaining("ALDER-17");
        assertThat(after(register("17", null)).decide(measure("2026-04-01", "1230 mm")))
                .hasSize(1);
    }

    @Test
    void the_girth_that_was_measured_last_counts_whatever_came_in_last() {
        Tree tree = after(register("17", DBH), measure("2026-05-01", "1240 mm"), measure("2026-04-01", "1230 mm"));
        assertThat(tree.girth()).isEqualTo(Length.ofMm(1240));
        assertThat(tree.measured()).isEqualTo(Instant.parse("2026-05-01T08:00:00Z"));
    }

    @Test
    void site_and_tag_make_the_identity() {
        assertThat(Tree.named(ALDER, " 12/a ")).isEqualTo(new TreeId("ALDER-12-A"));
        assertThatThrownBy(() -> Tree.named(ALDER, "1".repeat(40))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_correction_carries_what_was_said_before_and_needs_a_change_and_a_reason() {
        Tree tree = after(register("17", DBH));
        TreeDetails before = new TreeDetails(ALDER, "17", "heaven", AILAL, FENCE, "by the gate");
        TreeDetails after = new TreeDetails(ALDER, "18", "heaven", AILAL, null, "by the gate");
        assertThat(tree.decide(new CorrectTree(TREE, after, " misread ", PERSON, on("2026-04-02"))))
                .containsExactly(new TreeCorrected(TREE, before, after, "misread", PERSON, on("2026-04-02")));
        assertThat(after.changesFrom(before))
                .containsExactly("tag 17, now 18", "position 40.4400000 -75.3400000, now none");
        assertThatThrownBy(() -> tree.decide(new CorrectTree(TREE, before, "same", PERSON, on("2026-04-02"))))
                .isInstanceOf(TreeRefused.NothingCorrected.class);
        assertThatThrownBy(() -> tree.decide(new CorrectTree(TREE, after, " ", PERSON, on("2026-04-02"))))
                .isInstanceOf(TreeRefused.NothingCorrected.class)
                .hasMessageContaining("reason");
    }

    @Test
    void a_tree_that_is_gone_can_still_be_measured_and_found_again_but_a_standing_one_cannot() {
        NoteFoundAgain found = new NoteFoundAgain(TREE, "it stands", PERSON, on("2026-06-01"));
        assertThatThrownBy(() -> after(register("17", null)).decide(found)).isInstanceOf(TreeRefused.NotGone.class);
        Tree gone = after(register("17", null), new NoteGone(TREE, GoneHow.FELLED, "", PERSON, on("2026-05-01")));
        assertThat(gone.gone()).isTrue();
        assertThat(gone.decide(measure("2026-04-01", "1230 mm"))).hasSize(1);
        assertThat(gone.evolve(gone.decide(found).getFirst()).gone()).isFalse();
    }

    @Test
    void a_tree_is_merged_once_with_a_reason_and_its_facts_are_still_kept() {
        TreeId kept = new TreeId("ALDER-71");
        MergeTree merge = new MergeTree(TREE, kept, " one trunk ", PERSON, on("2026-05-01"));
        UnmergeTree unmerge = new UnmergeTree(TREE, "two trunks", PERSON, on("2026-05-02"));
        Tree tree = after(register("17", DBH));
        assertThat(tree.decide(merge))
                .containsExactly(new TreeMerged(TREE, kept, "one trunk", PERSON, on("2026-05-01")));
        assertThatThrownBy(() -> tree.decide(unmerge)).isInstanceOf(TreeRefused.NotMerged.class);
        assertThatThrownBy(() -> tree.decide(new MergeTree(TREE, TREE, "same", PERSON, on("2026-05-01"))))
                .hasMessageContaining("itself");
        assertThatThrownBy(() -> tree.decide(new MergeTree(TREE, kept, " ", PERSON, on("2026-05-01"))))
                .hasMessageContaining("reason");

        Tree merged = after(register("17", DBH), merge);
        assertThat(merged.mergedInto()).isEqualTo(kept);
        assertThatThrownBy(() -> merged.decide(merge)).hasMessageContaining("ALDER-71");
        assertThat(merged.decide(measure("2026-06-01", "1230 mm"))).hasSize(1);
        assertThat(after(register("17", DBH), merge, measure("2026-06-01", "1230 mm"))
                        .mergedInto())
                .isEqualTo(kept);
        assertThat(merged.decide(unmerge))
                .containsExactly(new TreeUnmerged(TREE, kept, "two trunks", PERSON, on("2026-05-02")));
        assertThat(after(register("17", DBH), merge, unmerge).mergedInto()).isNull();
    }

    @Test
    void events_that_cannot_follow_are_a_damaged_history() {
        TreeEvent registered = Tree.NONE.decide(register("17", null)).getFirst();
        Tree tree = Tree.NONE.evolve(registered);
        assertThatThrownBy(() -> tree.evolve(registered)).isInstanceOf(IllegalStateException.class);
        TreeEvent measured = tree.decide(measure("2026-04-01", "1230 mm")).getFirst();
        assertThatThrownBy(() -> Tree.NONE.evolve(measured)).isInstanceOf(IllegalStateException.class);
    }
}

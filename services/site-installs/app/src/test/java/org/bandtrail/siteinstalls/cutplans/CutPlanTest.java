package org.bandtrail.siteinstalls.cutplans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.AgreePlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.DrawPlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.DropPlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.HandOverPlan;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.junit.jupiter.api.Test;

/** A plan is kept only if it adds up, and goes its way once. */
class CutPlanTest {
    private static final CutPlanId PLAN = new CutPlanId("CP-1");
    private static final PersonId LEAD = new PersonId("P-01");
    private static final Occurred NOW =
            new Occurred(Instant.parse("2026-05-04T08:00:00Z"), Instant.parse("2026-05-04T08:00:00Z"));
    private static final TreeId T1 = new TreeId("S-01-T001");
    private static final TreeId T2 = new TreeId("S-01-T002");

    private static PlannedPiece piece(TreeId tree, long mm) {
        return new PlannedPiece(tree, 1, Length.ofMm(mm));
    }

    private static PlannedReel reel(String id, long length, long leftover, PlannedPiece... pieces) {
        return new PlannedReel(
                new ReelId(id),
                null,
                true,
                Length.ofMm(length),
                List.of(pieces),
                Length.ofMm(leftover),
                Length.ZERO,
                Length.ZERO);
    }

    private static MaterialCuts tape(List<PlannedReel> reels, PlannedPiece... uncut) {
        return new MaterialCuts(
                new MaterialCode("TAPE-127"),
                MaterialKind.TAPE,
                Length.ofMm(580),
                reels,
                List.of(uncut),
                List.of(),
                new MaterialCuts.ToBuy(uncut.length, Length.ofMm(50_000), 0, Length.ZERO),
                new MaterialCuts.Quality(Length.ZERO, Length.ZERO, 0, true, true, false));
    }

    private static DrawPlan draw(MaterialCuts cuts) {
        List<PlannedTree> trees = List.of(
                new PlannedTree(T1, new SiteId("S-01"), "1", Length.ofMm(1_000), 1, 7, 0),
                new PlannedTree(T2, new SiteId("S-01"), "2", Length.ofMm(1_200), 1, 8, 0));
        return new DrawPlan(
                PLAN,
                new DepotId("D-1"),
                LocalDate.of(2026, 5, 6),
                TapeMeasure.METRIC,
                new CutUse("sticky-band", null, null),
                1,
                trees,
                List.of(cuts),
                LEAD,
                NOW);
    }

    private static CutPlan after(CutPlanCommand... commands) {
        CutPlan plan = CutPlan.NONE;
        for (CutPlanCommand command : commands) {
            for (CutPlanEvent event : plan.decide(command)) {
                plan = plan.evolve(event);
            }
        }
        return plan;
    }

    private static DrawPlan good() {
        return draw(tape(List.of(reel("R-1", 3_000, 600, piece(T1, 1_100), piece(T2, 1_300)))));
    }

    private static DrawPlan partly() {
        return draw(tape(List.of(reel("R-1", 1_800, 700, piece(T1, 1_100))), piece(T2, 1_300)));
    }

    @Test
    void a_plan_that_adds_up_is_kept_as_it_is() {
        assertThat(CutPlan.NONE.decide(good()).getFirst())
                .isEqualTo(new CutPlanEvent.Drawn(
                        PLAN,
                        good().depot(),
                        good().day(),
                        TapeMeasure.METRIC,
                        new CutUse("sticky-band", null, null),
                        1,
                        good().trees(),
                        good().materials(),
                        LEAD,
                        NOW));
    }

    @Test
    void a_reel_whose_parts_are_not_its_length_is_refused_by_name() {
        assertThatThrownBy(() -> CutPlan.NONE.decide(
                        draw(tape(List.of(reel("R-1", 3_000, 599, piece(T1, 1_100), piece(T2, 1_300)))))))
                .isInstanceOf(CutPlanRefused.DoesNotAddUp.class)
                .hasMessageContaining("reel R-1")
                .hasMessageContaining("TAPE-127");
    }

    @Test
    void no_reel_is_cut_twice_and_no_piece_is_there_twice() {
        assertThatThrownBy(() -> CutPlan.NONE.decide(draw(tape(
                        List.of(reel("R-1", 1_100, 0, piece(T1, 1_100)), reel("R-1", 1_300, 0, piece(T2, 1_300)))))))
                .hasMessageContaining("reel R-1 is cut twice");
        assertThatThrownBy(() -> CutPlan.NONE.decide(draw(tape(
                        List.of(reel("R-1", 1_100, 0, piece(T1, 1_100)), reel("R-2", 1_100, 0, piece(T1, 1_100)))))))
                .hasMessageContaining("the piece for S-01-T001/1 is there twice");
    }

    @Test
    void a_plan_that_leaves_pieces_uncut_is_agreed_only_when_a_part_is_wanted() {
        assertThatThrownBy(() -> after(partly()).decide(new AgreePlan(PLAN, false, LEAD, NOW)))
                .isInstanceOf(CutPlanRefused.PiecesMissing.class)
                .hasMessageContaining("leaves 1 pieces uncut");
        assertThat(after(partly(), new AgreePlan(PLAN, true, LEAD, NOW)).state())
                .isEqualTo(CutPlan.State.AGREED);
    }

    @Test
    void an_agreed_plan_is_handed_over_once_and_then_not_dropped() {
        AgreePlan agree = new AgreePlan(PLAN, false, LEAD, NOW);
        HandOverPlan handOver = new HandOverPlan(PLAN, new KitId("K-1"), LEAD, NOW);
        assertThat(after(good(), agree, handOver).state()).isEqualTo(CutPlan.State.HANDED_OVER);
        assertThatThrownBy(() -> after(good()).decide(handOver)).isInstanceOf(CutPlanRefused.StandsElsewhere.class);
        assertThatThrownBy(() -> after(good(), agree, handOver).decide(new DropPlan(PLAN, "rain", LEAD, NOW)))
                .hasMessageContaining("it is handed over");
    }

    @Test
    void dropping_needs_a_reason_and_a_plan() {
        assertThatThrownBy(() -> after(good()).decide(new DropPlan(PLAN, " ", LEAD, NOW)))
                .isInstanceOf(CutPlanRefused.NoReason.class);
        assertThatThrownBy(() -> CutPlan.NONE.decide(new DropPlan(PLAN, "rain", LEAD, NOW)))
                .isInstanceOf(CutPlanRefused.Unknown.class);
        assertThat(after(good(), new DropPlan(PLAN, "rain", LEAD, NOW)).state()).isEqualTo(CutPlan.State.DROPPED);
    }

    @Test
    void an_identity_is_drawn_once() {
        assertThatThrownBy(() -> after(good()).decide(good())).isInstanceOf(CutPlanRefused.AlreadyDrawn.class);
    }
}

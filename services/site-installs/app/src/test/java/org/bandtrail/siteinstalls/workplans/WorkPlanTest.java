package org.bandtrail.siteinstalls.workplans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bandtrail.siteinstalls.workplans.PlanSamples.LEAD;
import static org.bandtrail.siteinstalls.workplans.PlanSamples.PLAN;
import static org.bandtrail.siteinstalls.workplans.PlanSamples.WHEN;
import static org.bandtrail.siteinstalls.workplans.PlanSamples.content;
import static org.bandtrail.siteinstalls.workplans.PlanSamples.tree;
import static org.bandtrail.siteinstalls.workplans.PlanSamples.usual;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Agree;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.CallOff;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Change;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Draft;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Finish;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanChanged;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanRedrafted;
import org.junit.jupiter.api.Test;

class WorkPlanTest {
    private static final PlanContent OTHER = content(tree("T-3", 800, 1));

    private static WorkPlan after(WorkPlanCommand... commands) {
        WorkPlan plan = WorkPlan.NONE;
        for (WorkPlanCommand command : commands) {
            for (WorkPlanEvent event : plan.decide(command)) {
                plan = plan.evolve(event);
            }
        }
        return plan;
    }

    private static Draft draft(PlanContent content) {
        return new Draft(PLAN, content, LEAD, WHEN);
    }

    private static Change change(PlanContent content, String reason) {
        return new Change(PLAN, content, reason, LEAD, WHEN);
    }

    private static Agree agree() {
        return new Agree(PLAN, LEAD, WHEN);
    }

    private static CallOff callOff(String reason) {
        return new CallOff(PLAN, reason, LEAD, WHEN);
    }

    @Test
    void a_plan_needs_its_pieces_and_says_which_is_the_longest() {
        assertThat(usual().needs())
                .containsExactly(
                        new PlanNeed(new MaterialCode("TAPE-127"), MaterialKind.TAPE, 1090 + 2 * 1590, 1590, 3),
                        new PlanNeed(new MaterialCode("MESH-12"), MaterialKind.MESH, 1230 + 2 * 1730, 1730, 3),
                        new PlanNeed(new MaterialCode("PIN-15"), MaterialKind.FASTENER, 27, 0, 27));
        assertThat(usual().bands()).isEqualTo(3);
    }

    @Test
    void a_draft_may_change_without_a_word_but_an_agreed_plan_needs_a_reason() {
        assertThat(after(draft(usual())).decide(change(OTHER, "")).getFirst()).isInstanceOf(PlanRedrafted.class);

        WorkPlan agreed = after(draft(usual()), agree());
        assertThatThrownBy(() -> agreed.decide(change(OTHER, "  ")))
                .isInstanceOf(WorkPlanRefused.ReasonMissing.class)
                .hasMessageContaining("Say why");
        assertThat(agreed.decide(change(OTHER, " rain ")))
                .containsExactly(new PlanChanged(PLAN, OTHER, "rain", LEAD, WHEN));
        assertThat(after(draft(usual()), agree(), change(OTHER, "rain")).state())
                .isEqualTo(WorkPlan.State.CHANGED);
    }

    @Test
    void what_is_so_already_happens_no_second_time() {
        WorkPlan agreed = after(draft(usual()), agree());
        assertThat(agreed.decide(agree())).isEmpty();
        assertThat(agreed.decide(change(usual(), "")))
                .as("nothing is otherwise")
                .isEmpty();
        WorkPlan off = after(draft(usual()), callOff("rain"));
        assertThat(off.decide(callOff("rain"))).isEmpty();
        WorkPlan done = after(draft(usual()), agree(), new Finish(PLAN, "", LEAD, WHEN));
        assertThat(done.decide(new Finish(PLAN, "", LEAD, WHEN))).isEmpty();
    }

    @Test
    void a_closed_plan_stays_closed() {
        WorkPlan off = after(draft(usual()), agree(), callOff("the owner has guests"));
        for (WorkPlanCommand wish : List.of(agree(), change(OTHER, "x"), new Finish(PLAN, "", LEAD, WHEN))) {
            assertThatThrownBy(() -> off.decide(wish))
                    .isInstanceOf(WorkPlanRefused.DoesNotFollow.class)
                    .hasMessageContaining("called off");
        }
        WorkPlan done = after(draft(usual()), agree(), new Finish(PLAN, "", LEAD, WHEN));
        assertThatThrownBy(() -> done.decide(callOff("rain"))).hasMessageContaining("is done");
    }

    @Test
    void only_an_agreed_plan_can_be_done_and_calling_off_needs_a_reason() {
        WorkPlan drafted = after(draft(usual()));
        assertThatThrownBy(() -> drafted.decide(new Finish(PLAN, "", LEAD, WHEN)))
                .isInstanceOf(WorkPlanRefused.NotAgreed.class);
        assertThatThrownBy(() -> drafted.decide(callOff(" "))).isInstanceOf(WorkPlanRefused.ReasonMissing.class);
        assertThatThrownBy(() -> drafted.decide(draft(usual()))).isInstanceOf(WorkPlanRefused.IdentityTaken.class);
        assertThatThrownBy(() -> WorkPlan.NONE.decide(agree())).hasMessageContaining("not known");
    }

    @Test
    void a_plan_without_trees_with_a_tree_twice_or_with_days_that_do_not_fit_is_no_plan() {
        assertThatThrownBy(() -> WorkPlan.NONE.decide(draft(content()))).hasMessageContaining("[0] trees");
        assertThatThrownBy(() -> WorkPlan.NONE.decide(draft(content(tree("T-1", 900, 1), tree("T-1", 900, 1)))))
                .isInstanceOf(WorkPlanRefused.TreeTwice.class)
                .hasMessageContaining("[T-1]");
        for (int days : new int[] {-1, WorkPlan.MOST_DAYS}) {
            assertThatThrownBy(
                            () -> WorkPlan.NONE.decide(draft(until(usual().day().plusDays(days)))))
                    .isInstanceOf(WorkPlanRefused.DaysDoNotFit.class);
        }
        assertThat(WorkPlan.NONE.decide(draft(until(usual().day().plusDays(WorkPlan.MOST_DAYS - 1)))))
                .hasSize(1);
    }

    private static PlanContent until(LocalDate lastDay) {
        PlanContent usual = usual();
        return new PlanContent(
                usual.day(),
                lastDay,
                usual.crew(),
                usual.depot(),
                usual.pest(),
                usual.programme(),
                usual.device(),
                usual.materials(),
                usual.policyVersion(),
                null,
                null,
                usual.trees(),
                "");
    }
}

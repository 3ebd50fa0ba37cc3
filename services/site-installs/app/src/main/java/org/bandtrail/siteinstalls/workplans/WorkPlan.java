package org.bandtrail.siteinstalls.workplans;

import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Agree;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.CallOff;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Change;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Draft;
import org.bandtrail.siteinstalls.workplans.WorkPlanCommand.Finish;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanAgreed;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanCalledOff;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanChanged;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanDone;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanDrafted;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanRedrafted;
import org.jspecify.annotations.Nullable;

/**
 * One work plan.
 *
 * @param state where it is in its life
 * @param content what is planned, null before anything happened
 */
public record WorkPlan(State state, @Nullable PlanContent content) {
    /** Before anything happened. */
    public static final WorkPlan NONE = new WorkPlan(State.NEW, null);

    /** A plan of more days is several plans. */
    static final int MOST_DAYS = 14;

    /** A crew's list longer than this is several plans. */
    static final int MOST_TREES = 500;

    /** The life of a plan. */
    public enum State {
        /** Nothing happened. */
        NEW("not known"),
        /** Made, not agreed. */
        DRAFTED("drafted"),
        /** Agreed; its material is needed. */
        AGREED("agreed"),
        /** Agreed and then planned otherwise; its material is needed. */
        CHANGED("changed"),
        /** The work is done. */
        DONE("done"),
        /** Called off. */
        CALLED_OFF("called off");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** In a sentence after "is". */
        public String words() {
            return words;
        }

        /** Whether its material is needed. */
        public boolean binding() {
            return this == AGREED || this == CHANGED;
        }
    }

    /**
     * Decides a wish.
     *
     * @return nothing if it is so already
     * @throws WorkPlanRefused if it does not follow, or the plan is no plan
     */
    public List<WorkPlanEvent> decide(WorkPlanCommand command) {
        return switch (command) {
            case Draft draft -> drafted(draft);
            case Change change -> changed(change);
            case Agree agree -> agreed(agree);
            case Finish finish -> finished(finish);
            case CallOff off -> calledOff(off);
        };
    }

    private List<WorkPlanEvent> drafted(Draft draft) {
        if (state != State.NEW) {
            throw new WorkPlanRefused.IdentityTaken(draft.planId(), state);
        }
        requireSound(draft.planId(), draft.content());
        return List.of(new PlanDrafted(draft.planId(), draft.content(), draft.by(), draft.when()));
    }

    private List<WorkPlanEvent> changed(Change change) {
        mustBeOpen(change.planId(), "changed");
        requireSound(change.planId(), change.content());
        String reason = change.reason().strip();
        if (change.content().equals(content)) {
            return List.of();
        }
        if (!state.binding()) {
            return List.of(new PlanRedrafted(change.planId(), change.content(), reason, change.by(), change.when()));
        }
        mustSayWhy(change.planId(), reason, "changed");
        return List.of(new PlanChanged(change.planId(), change.content(), reason, change.by(), change.when()));
    }

    private List<WorkPlanEvent> agreed(Agree agree) {
        PlanContent now = mustBeOpen(agree.planId(), "agreed");
        return state.binding() ? List.of() : List.of(new PlanAgreed(agree.planId(), now, agree.by(), agree.when()));
    }

    private List<WorkPlanEvent> finished(Finish finish) {
        if (state == State.DONE) {
            return List.of();
        }
        mustBeOpen(finish.planId(), "done");
        if (!state.binding()) {
            throw new WorkPlanRefused.NotAgreed(finish.planId());
        }
        return List.of(new PlanDone(finish.planId(), finish.note().strip(), finish.by(), finish.when()));
    }

    private List<WorkPlanEvent> calledOff(CallOff off) {
        if (state == State.CALLED_OFF) {
            return List.of();
        }
        mustBeOpen(off.planId(), "called off");
        String reason = off.reason().strip();
        mustSayWhy(off.planId(), reason, "called off");
        return List.of(new PlanCalledOff(off.planId(), reason, off.by(), off.when()));
    }

    private PlanContent mustBeOpen(PlanId plan, String wished) {
        PlanContent now = content;
        if (now == null || state == State.DONE || state == State.CALLED_OFF) {
            throw new WorkPlanRefused.DoesNotFollow(plan, state, wished);
        }
        return now;
    }

    private static void mustSayWhy(PlanId plan, String reason, String wished) {
        if (reason.isEmpty()) {
            throw new WorkPlanRefused.ReasonMissing(plan, wished);
        }
    }

    private static void requireSound(PlanId plan, PlanContent content) {
        if (content.trees().isEmpty() || content.trees().size() > MOST_TREES) {
            throw new WorkPlanRefused.NumberOfTrees(plan, content.trees().size(), MOST_TREES);
        }
        long days = ChronoUnit.DAYS.between(content.day(), content.lastDay()) + 1;
        if (days < 1 || days > MOST_DAYS) {
            throw new WorkPlanRefused.DaysDoNotFit(plan, content.day(), content.lastDay(), MOST_DAYS);
        }
        Set<TreeId> seen = new HashSet<>();
        for (PlanTree tree : content.trees()) {
            if (!seen.add(tree.treeId())) {
                throw new WorkPlanRefused.TreeTwice(plan, tree.treeId());
            }
        }
    }

    /** The plan after the event; an event that cannot follow is a damaged history and throws. */
    public WorkPlan evolve(WorkPlanEvent event) {
        if ((state == State.NEW) != (event instanceof PlanDrafted)) {
            throw new IllegalStateException("%s cannot follow on %s.".formatted(event, state));
        }
        return switch (event) {
            case PlanDrafted drafted -> new WorkPlan(State.DRAFTED, drafted.content());
            case PlanRedrafted redrafted -> new WorkPlan(State.DRAFTED, redrafted.content());
            case PlanAgreed agreed -> new WorkPlan(State.AGREED, agreed.content());
            case PlanChanged changed -> new WorkPlan(State.CHANGED, changed.content());
            case PlanDone _ -> new WorkPlan(State.DONE, content);
            case PlanCalledOff _ -> new WorkPlan(State.CALLED_OFF, content);
        };
    }
}

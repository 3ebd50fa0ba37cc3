package org.bandtrail.siteinstalls.workplans;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;

/** Why a wish about a work plan is refused. */
public abstract sealed class WorkPlanRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private WorkPlanRefused(String message) {
        super(message);
    }

    /** There is a plan of this name. */
    public static final class IdentityTaken extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        IdentityTaken(PlanId plan, WorkPlan.State state) {
            super("Plan [%s] exists and is %s. Change it, or give the new plan another name."
                    .formatted(plan, state.words()));
        }

        @Override
        public String problem() {
            return "plan-exists";
        }
    }

    /** The wish does not follow on where the plan is. */
    public static final class DoesNotFollow extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        DoesNotFollow(PlanId plan, WorkPlan.State state, String wished) {
            super("Plan [%s] is %s, so it cannot be %s. Make a new plan.".formatted(plan, state.words(), wished));
        }

        @Override
        public String problem() {
            return "plan-does-not-follow";
        }
    }

    /** Only what was agreed can be done. */
    public static final class NotAgreed extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        NotAgreed(PlanId plan) {
            super("Plan [%s] was never agreed, so it cannot be done. Agree to it first.".formatted(plan));
        }

        @Override
        public String problem() {
            return "plan-not-agreed";
        }
    }

    /** Others count on an agreed plan; a change needs a reason. */
    public static final class ReasonMissing extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(PlanId plan, String wished) {
            super("Plan [%s] cannot be %s without a reason, for example the weather. Say why.".formatted(plan, wished));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "plan-reason-missing";
        }
    }

    /** No tree, or more than a crew can read. */
    public static final class NumberOfTrees extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        NumberOfTrees(PlanId plan, int trees, int most) {
            super("Plan [%s] has [%d] trees. Choose 1 to %d, and make several plans of more."
                    .formatted(plan, trees, most));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "plan-number-of-trees";
        }
    }

    /** The days are in the wrong order or too far apart. */
    public static final class DaysDoNotFit extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        DaysDoNotFit(PlanId plan, LocalDate day, LocalDate lastDay, int most) {
            super("Plan [%s] would go from %s to %s. Plan 1 to %d days, the first one first."
                    .formatted(plan, day, lastDay, most));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "plan-days-do-not-fit";
        }
    }

    /** One tree stands in the list twice. */
    public static final class TreeTwice extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        TreeTwice(PlanId plan, TreeId tree) {
            super("Tree [%s] is twice in plan [%s]. Keep one line and say how many bands.".formatted(tree, plan));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "plan-tree-twice";
        }
    }

    /** Nobody works at a site that is closed. */
    public static final class SiteIsClosed extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;

        /** @param closedOn since when */
        public SiteIsClosed(SiteId site, LocalDate closedOn, LocalDate day) {
            super("Site [%s] is closed from %s on, so nothing is planned there for %s. Choose another site or day."
                    .formatted(site, closedOn, day));
        }

        @Override
        public String problem() {
            return "plan-site-closed";
        }
    }

    /** Some trees cannot be planned. */
    public static final class TreesNotReady extends WorkPlanRefused {
        private static final long serialVersionUID = 1L;
        private static final int MOST_NAMED = 5;

        /** @param why a sentence for each tree, saying what to do */
        public TreesNotReady(List<String> why) {
            super(String.join(" ", why.subList(0, Math.min(MOST_NAMED, why.size())))
                    + (why.size() > MOST_NAMED ? " So it is with %d more.".formatted(why.size() - MOST_NAMED) : ""));
        }

        @Override
        public String problem() {
            return "plan-trees-not-ready";
        }
    }
}

package org.bandtrail.siteinstalls.workplans;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a work plan, in the order of its life. All are wishes. */
public sealed interface WorkPlanCommand {
    /** The plan. */
    PlanId planId();

    /**
     * Make a plan that nobody has agreed to yet.
     *
     * @param planId a free identity
     * @param content made and checked by {@code planmaking}
     * @param by who plans
     * @param when when
     */
    record Draft(@TargetAggregateIdentifier PlanId planId, PlanContent content, PersonId by, Occurred when)
            implements WorkPlanCommand {}

    /**
     * Plan it otherwise.
     *
     * @param planId a plan that is neither done nor called off
     * @param content all of it as it ought to be
     * @param reason why; needed once it is agreed
     * @param by who changes
     * @param when when
     */
    record Change(
            @TargetAggregateIdentifier PlanId planId, PlanContent content, String reason, PersonId by, Occurred when)
            implements WorkPlanCommand {}

    /** Agree to it: from now on its material is counted as needed. */
    record Agree(@TargetAggregateIdentifier PlanId planId, PersonId by, Occurred when) implements WorkPlanCommand {}

    /** Note that the work is done; what it needed is needed no more. */
    record Finish(@TargetAggregateIdentifier PlanId planId, String note, PersonId by, Occurred when)
            implements WorkPlanCommand {}

    /** Call it off, with the reason; what it needed is needed no more. */
    record CallOff(@TargetAggregateIdentifier PlanId planId, String reason, PersonId by, Occurred when)
            implements WorkPlanCommand {}
}

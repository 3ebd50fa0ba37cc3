package org.bandtrail.siteinstalls.cutplans;

import java.time.LocalDate;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;

/** What people ask of cut plans. All are wishes. */
public sealed interface CutPlanCommand {
    /** The plan. */
    CutPlanId planId();

    /**
     * Keeps a plan that was worked out.
     *
     * @param planId a free identity
     * @param depot whose reels are cut
     * @param day on which the bands go up
     * @param measure the crew's measuring tape
     * @param use the kind of device, the programme and the pest
     * @param policyVersion the cut-length policy the lengths come from
     * @param trees in the order of the walk
     * @param materials one part for what is cut from tape, one for what is cut from mesh
     * @param by who plans
     * @param when when
     */
    record DrawPlan(
            @TargetAggregateIdentifier CutPlanId planId,
            DepotId depot,
            LocalDate day,
            TapeMeasure measure,
            CutUse use,
            int policyVersion,
            List<PlannedTree> trees,
            List<MaterialCuts> materials,
            PersonId by,
            Occurred when)
            implements CutPlanCommand {}

    /**
     * Binds the reels of the plan.
     *
     * @param planId the plan
     * @param partly whether the plan is wanted although pieces stay uncut
     * @param by who agrees
     * @param when when
     */
    record AgreePlan(@TargetAggregateIdentifier CutPlanId planId, boolean partly, PersonId by, Occurred when)
            implements CutPlanCommand {}

    /**
     * Gives the reels free again.
     *
     * @param planId the plan
     * @param reason why it is not cut
     * @param by who drops it
     * @param when when
     */
    record DropPlan(@TargetAggregateIdentifier CutPlanId planId, String reason, PersonId by, Occurred when)
            implements CutPlanCommand {}

    /**
     * The pieces were cut and went out with a crew.
     *
     * @param planId the plan
     * @param kitId the kit they went out with
     * @param by who handed them over
     * @param when when
     */
    record HandOverPlan(@TargetAggregateIdentifier CutPlanId planId, KitId kitId, PersonId by, Occurred when)
            implements CutPlanCommand {}
}

package org.bandtrail.siteinstalls.cutplans;

import java.time.LocalDate;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;

/** What happened to cut plans. */
public sealed interface CutPlanEvent {
    /** The plan. */
    CutPlanId planId();

    /**
     * A plan was worked out and kept.
     *
     * @param planId the plan
     * @param depot whose reels are cut
     * @param day on which the bands go up
     * @param measure the crew's measuring tape
     * @param use the kind of device, the programme and the pest
     * @param policyVersion the cut-length policy the lengths come from
     * @param trees in the order of the walk
     * @param materials one part for each material
     * @param by who planned
     * @param when when
     */
    @StoredAs("cut-plan.drawn")
    @Revision("1")
    record Drawn(
            CutPlanId planId,
            DepotId depot,
            LocalDate day,
            TapeMeasure measure,
            CutUse use,
            int policyVersion,
            List<PlannedTree> trees,
            List<MaterialCuts> materials,
            PersonId by,
            Occurred when)
            implements CutPlanEvent {
        /** Keeps its own copies. */
        public Drawn {
            trees = List.copyOf(trees);
            materials = List.copyOf(materials);
        }
    }

    /**
     * The reels are bound.
     *
     * @param planId the plan
     * @param partly although pieces stay uncut
     * @param by who agreed
     * @param when when
     */
    @StoredAs("cut-plan.agreed")
    @Revision("1")
    record Agreed(CutPlanId planId, boolean partly, PersonId by, Occurred when) implements CutPlanEvent {}

    /**
     * The plan is not cut; its reels are free again.
     *
     * @param planId the plan
     * @param reason why
     * @param by who dropped it
     * @param when when
     */
    @StoredAs("cut-plan.dropped")
    @Revision("1")
    record Dropped(CutPlanId planId, String reason, PersonId by, Occurred when) implements CutPlanEvent {}

    /**
     * The pieces went out.
     *
     * @param planId the plan
     * @param kitId the kit they went out with
     * @param by who handed them over
     * @param when when
     */
    @StoredAs("cut-plan.handed-over")
    @Revision("1")
    record HandedOver(CutPlanId planId, KitId kitId, PersonId by, Occurred when) implements CutPlanEvent {}
}

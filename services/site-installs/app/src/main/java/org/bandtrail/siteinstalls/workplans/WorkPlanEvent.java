package org.bandtrail.siteinstalls.workplans;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a work plan. */
public sealed interface WorkPlanEvent {
    /** The plan. */
    PlanId planId();

    /** Who did it. */
    PersonId by();

    /** When. */
    Occurred when();

    /** Made; nobody has agreed to it yet. */
    @StoredAs("plan.drafted")
    @Revision("2")
    record PlanDrafted(PlanId planId, PlanContent content, PersonId by, Occurred when) implements WorkPlanEvent {}

    /** Planned otherwise before anybody agreed. */
    @StoredAs("plan.redrafted")
    @Revision("2")
    record PlanRedrafted(PlanId planId, PlanContent content, String reason, PersonId by, Occurred when)
            implements WorkPlanEvent {}

    /** Agreed, with what was agreed to. */
    @StoredAs("plan.agreed")
    @Revision("2")
    record PlanAgreed(PlanId planId, PlanContent content, PersonId by, Occurred when) implements WorkPlanEvent {}

    /** Planned otherwise after it was agreed. */
    @StoredAs("plan.changed")
    @Revision("2")
    record PlanChanged(PlanId planId, PlanContent content, String reason, PersonId by, Occurred when)
            implements WorkPlanEvent {}

    /** The work is done. */
    @StoredAs("plan.done")
    @Revision("1")
    record PlanDone(PlanId planId, String note, PersonId by, Occurred when) implements WorkPlanEvent {}

    /** Called off. */
    @StoredAs("plan.called-off")
    @Revision("1")
    record PlanCalledOff(PlanId planId, String reason, PersonId by, Occurred when) implements WorkPlanEvent {}
}

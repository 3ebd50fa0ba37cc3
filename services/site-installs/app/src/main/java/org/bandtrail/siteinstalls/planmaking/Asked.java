package org.bandtrail.siteinstalls.planmaking;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.workplans.PlanContent;
import org.bandtrail.siteinstalls.workplans.PlanId;
import org.bandtrail.siteinstalls.workplans.PlanNeed;
import org.bandtrail.siteinstalls.workplans.PlanTree;
import org.bandtrail.siteinstalls.workplans.WorkPlanView;
import org.jspecify.annotations.Nullable;

/**
 * What a review looks at.
 *
 * @param plan its own name, so that it is not counted against itself
 */
record Asked(
        PlanId plan,
        LocalDate day,
        LocalDate lastDay,
        CrewId crew,
        DepotId depot,
        @Nullable String pest,
        @Nullable String programme,
        String device,
        @Nullable LocalDate putUpFrom,
        @Nullable LocalDate putUpUntil,
        boolean guarded,
        int bands,
        List<TreeId> trees,
        List<PlanNeed> needs) {

    static Asked of(PlanId plan, PlanContent content) {
        return new Asked(
                plan,
                content.day(),
                content.lastDay(),
                content.crew(),
                content.depot(),
                content.pest(),
                content.programme(),
                content.device(),
                content.putUpFrom(),
                content.putUpUntil(),
                content.materials().mesh() != null,
                content.bands(),
                content.trees().stream().map(PlanTree::treeId).toList(),
                content.needs());
    }

    static Asked of(WorkPlanView.Whole whole) {
        WorkPlanView view = whole.plan();
        return new Asked(
                new PlanId(view.planId()),
                view.day(),
                view.lastDay(),
                new CrewId(view.crewId()),
                new DepotId(view.depotId()),
                view.pest(),
                view.programme(),
                view.device(),
                view.putUpFrom(),
                view.putUpUntil(),
                view.meshCode() != null,
                view.bands(),
                whole.walk().stream().map(line -> new TreeId(line.treeId())).toList(),
                whole.needs());
    }
}

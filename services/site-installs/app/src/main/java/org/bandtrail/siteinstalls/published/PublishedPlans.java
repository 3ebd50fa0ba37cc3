package org.bandtrail.siteinstalls.published;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventexchange.Outbox;
import org.bandtrail.eventstore.AppendedEvent;
import org.bandtrail.eventstore.WhenAppended;
import org.bandtrail.siteinstalls.contract.v1.MaterialNeeded;
import org.bandtrail.siteinstalls.workplans.PlanContent;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent;
import org.springframework.stereotype.Component;

/** Tells what agreed plans need, each time anew and whole. What is only drafted is nobody's demand yet. */
@Component
final class PublishedPlans implements WhenAppended {
    private final Outbox outbox;

    PublishedPlans(Outbox outbox) {
        this.outbox = outbox;
    }

    @Override
    public void appended(List<AppendedEvent> events) {
        List<Outbox.Told> told = new ArrayList<>();
        for (AppendedEvent event : events) {
            if (event.payload() instanceof WorkPlanEvent plan) {
                told(plan, event.sequence()).forEach(each -> told.add(new Outbox.Told(event.eventId(), each)));
            }
        }
        outbox.appendAll(told);
    }

    static List<MaterialNeeded> told(WorkPlanEvent event, long sequence) {
        return switch (event) {
            case WorkPlanEvent.PlanDrafted _, WorkPlanEvent.PlanRedrafted _ -> List.of();
            case WorkPlanEvent.PlanAgreed agreed -> List.of(needed(event, sequence, lines(agreed.content())));
            case WorkPlanEvent.PlanChanged changed -> List.of(needed(event, sequence, lines(changed.content())));
            case WorkPlanEvent.PlanDone _, WorkPlanEvent.PlanCalledOff _ -> List.of(needed(event, sequence, List.of()));
        };
    }

    private static List<MaterialNeeded.Line> lines(PlanContent content) {
        return content.needs().stream()
                .map(need -> new MaterialNeeded.Line(
                        content.depot().value(),
                        content.day(),
                        content.lastDay(),
                        need.material().value(),
                        need.kind().name(),
                        need.quantity(),
                        need.longest()))
                .toList();
    }

    private static MaterialNeeded needed(WorkPlanEvent event, long sequence, List<MaterialNeeded.Line> lines) {
        return new MaterialNeeded(
                event.planId().value(),
                sequence,
                lines,
                event.when().happened(),
                event.when().recorded(),
                event.by().value());
    }
}

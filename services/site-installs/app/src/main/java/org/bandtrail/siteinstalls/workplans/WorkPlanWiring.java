package org.bandtrail.siteinstalls.workplans;

import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.RevisionStep;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.databind.node.ObjectNode;

/** Declares the work plan to the event store. */
@Configuration(proxyBeanMethods = false)
class WorkPlanWiring {

    @Bean
    AggregateOf<?> workPlanAggregate() {
        return WorkPlanAggregate.DECLARED;
    }

    @Bean
    RevisionStep planDraftedTwo() {
        return new RevisionStep("plan.drafted", 1, WorkPlanWiring::knowsDevices);
    }

    @Bean
    RevisionStep planRedraftedTwo() {
        return new RevisionStep("plan.redrafted", 1, WorkPlanWiring::knowsDevices);
    }

    @Bean
    RevisionStep planAgreedTwo() {
        return new RevisionStep("plan.agreed", 1, WorkPlanWiring::knowsDevices);
    }

    @Bean
    RevisionStep planChangedTwo() {
        return new RevisionStep("plan.changed", 1, WorkPlanWiring::knowsDevices);
    }

    /** Revision 1 planned sticky bands for no programme; nothing but their pins was counted. */
    private static void knowsDevices(ObjectNode planned) {
        ObjectNode content = (ObjectNode) planned.required("content");
        content.putNull("programme").put("device", "sticky-band");
        ((ObjectNode) content.required("materials")).putNull("other");
        content.required("trees").forEach(tree -> ((ObjectNode) tree).put("others", 0));
    }
}

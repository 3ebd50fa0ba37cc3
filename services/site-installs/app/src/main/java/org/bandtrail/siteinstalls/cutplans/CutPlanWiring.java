package org.bandtrail.siteinstalls.cutplans;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the cut plan to the event store, and gives the search its clock. */
@Configuration(proxyBeanMethods = false)
class CutPlanWiring {

    @Bean
    AggregateOf<?> cutPlanAggregate() {
        return CutPlanAggregate.DECLARED;
    }

    /** Runs forwards only, as patience needs. */
    @Bean
    SearchClock cutPlanSearchClock() {
        return System::nanoTime;
    }
}

package org.bandtrail.siteinstalls.workplans;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the work plan to the event store. */
@Configuration(proxyBeanMethods = false)
class WorkPlanWiring {

    @Bean
    AggregateOf<?> workPlanAggregate() {
        return WorkPlanAggregate.DECLARED;
    }
}

package org.bandtrail.supplystock.landedcosts;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares a landed cost to the event store. */
@Configuration(proxyBeanMethods = false)
class LandedCostWiring {

    @Bean
    AggregateOf<?> landedCostAggregate() {
        return LandedCostAggregate.DECLARED;
    }
}

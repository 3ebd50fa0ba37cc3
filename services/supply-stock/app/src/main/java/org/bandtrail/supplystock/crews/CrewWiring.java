package org.bandtrail.supplystock.crews;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the crew to the event store. */
@Configuration(proxyBeanMethods = false)
class CrewWiring {

    @Bean
    AggregateOf<?> crewAggregate() {
        return CrewAggregate.DECLARED;
    }
}

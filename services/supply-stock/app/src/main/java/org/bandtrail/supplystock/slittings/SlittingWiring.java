package org.bandtrail.supplystock.slittings;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the slitting to the event store. */
@Configuration(proxyBeanMethods = false)
class SlittingWiring {

    @Bean
    AggregateOf<?> slittingAggregate() {
        return SlittingAggregate.DECLARED;
    }
}

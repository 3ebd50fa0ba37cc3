package org.bandtrail.supplystock.holds;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the hold to the event store. */
@Configuration(proxyBeanMethods = false)
class HoldWiring {

    @Bean
    AggregateOf<?> holdAggregate() {
        return HoldAggregate.DECLARED;
    }
}

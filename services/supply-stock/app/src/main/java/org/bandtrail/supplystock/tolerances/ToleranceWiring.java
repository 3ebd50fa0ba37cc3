package org.bandtrail.supplystock.tolerances;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the policy to the event store. */
@Configuration(proxyBeanMethods = false)
class ToleranceWiring {

    @Bean
    AggregateOf<?> toleranceAggregate() {
        return ToleranceAggregate.DECLARED;
    }
}

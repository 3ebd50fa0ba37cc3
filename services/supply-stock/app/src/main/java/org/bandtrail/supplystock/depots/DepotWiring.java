package org.bandtrail.supplystock.depots;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the depot to the event store. */
@Configuration(proxyBeanMethods = false)
class DepotWiring {

    @Bean
    AggregateOf<?> depotAggregate() {
        return DepotAggregate.DECLARED;
    }
}

package org.bandtrail.supplystock.discrepancies;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares questions that wait to the event store. */
@Configuration(proxyBeanMethods = false)
class WaitingWiring {

    @Bean
    AggregateOf<?> waitingAggregate() {
        return WaitingAggregate.DECLARED;
    }
}

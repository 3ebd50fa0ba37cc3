package org.bandtrail.supplystock.journal;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the organisation's accounts to the event store. */
@Configuration(proxyBeanMethods = false)
class ChartWiring {

    @Bean
    AggregateOf<?> chartAggregate() {
        return ChartAggregate.DECLARED;
    }
}

package org.bandtrail.supplystock.counts;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the count to the event store. */
@Configuration(proxyBeanMethods = false)
class CountWiring {

    @Bean
    AggregateOf<?> countAggregate() {
        return CountAggregate.DECLARED;
    }
}

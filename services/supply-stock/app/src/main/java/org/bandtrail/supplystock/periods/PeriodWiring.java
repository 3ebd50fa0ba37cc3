package org.bandtrail.supplystock.periods;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the months of the books to the event store. */
@Configuration(proxyBeanMethods = false)
class PeriodWiring {

    @Bean
    AggregateOf<?> periodAggregate() {
        return PeriodAggregate.DECLARED;
    }
}

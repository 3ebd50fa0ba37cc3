package org.bandtrail.supplystock.recalls;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the recall to the event store. */
@Configuration(proxyBeanMethods = false)
class RecallWiring {

    @Bean
    AggregateOf<?> recallAggregate() {
        return RecallAggregate.DECLARED;
    }
}

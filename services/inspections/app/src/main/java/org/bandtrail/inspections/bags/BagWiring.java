package org.bandtrail.inspections.bags;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the bag to the event store. */
@Configuration(proxyBeanMethods = false)
class BagWiring {
    @Bean
    AggregateOf<?> bagAggregate() {
        return BagAggregate.DECLARED;
    }
}

package org.bandtrail.supplystock.handouts;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the kit to the event store. */
@Configuration(proxyBeanMethods = false)
class KitWiring {

    @Bean
    AggregateOf<?> kitAggregate() {
        return KitAggregate.DECLARED;
    }
}

package org.bandtrail.supplystock.items;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the item to the event store. */
@Configuration(proxyBeanMethods = false)
class ItemWiring {

    @Bean
    AggregateOf<?> itemAggregate() {
        return ItemAggregate.DECLARED;
    }
}

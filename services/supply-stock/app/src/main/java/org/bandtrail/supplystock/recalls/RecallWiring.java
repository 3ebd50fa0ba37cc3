package org.bandtrail.supplystock.recalls;

import org.axonframework.serialization.upcasting.event.SingleEventUpcaster;
import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the recall to the event store, and how its older events are read. */
@Configuration(proxyBeanMethods = false)
class RecallWiring {

    @Bean
    AggregateOf<?> recallAggregate() {
        return RecallAggregate.DECLARED;
    }

    @Bean
    SingleEventUpcaster recallWithoutSupplier() {
        return new RecallWithoutSupplier();
    }
}

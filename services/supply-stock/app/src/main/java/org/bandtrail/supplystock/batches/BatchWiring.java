package org.bandtrail.supplystock.batches;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the batch to the event store. */
@Configuration(proxyBeanMethods = false)
class BatchWiring {

    @Bean
    AggregateOf<?> batchAggregate() {
        return BatchAggregate.DECLARED;
    }
}

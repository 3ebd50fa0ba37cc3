package org.bandtrail.supplystock.bins;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the bin to the event store. */
@Configuration(proxyBeanMethods = false)
class BinWiring {

    @Bean
    AggregateOf<?> binAggregate() {
        return BinAggregate.DECLARED;
    }
}

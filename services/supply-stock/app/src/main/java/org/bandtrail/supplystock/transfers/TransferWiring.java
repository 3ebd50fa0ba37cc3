package org.bandtrail.supplystock.transfers;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the transfer to the event store. */
@Configuration(proxyBeanMethods = false)
class TransferWiring {

    @Bean
    AggregateOf<?> transferAggregate() {
        return TransferAggregate.DECLARED;
    }
}

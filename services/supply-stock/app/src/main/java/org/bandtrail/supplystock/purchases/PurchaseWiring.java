package org.bandtrail.supplystock.purchases;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the purchase to the event store. */
@Configuration(proxyBeanMethods = false)
class PurchaseWiring {

    @Bean
    AggregateOf<?> purchaseAggregate() {
        return PurchaseAggregate.DECLARED;
    }
}

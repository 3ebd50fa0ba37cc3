package org.bandtrail.supplystock.billings;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the billings of a purchase to the event store. */
@Configuration(proxyBeanMethods = false)
class BillingWiring {

    @Bean
    AggregateOf<?> billingAggregate() {
        return BillingAggregate.DECLARED;
    }
}

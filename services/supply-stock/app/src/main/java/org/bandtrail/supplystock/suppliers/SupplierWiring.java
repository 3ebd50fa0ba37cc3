package org.bandtrail.supplystock.suppliers;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the supplier to the event store. */
@Configuration(proxyBeanMethods = false)
class SupplierWiring {

    @Bean
    AggregateOf<?> supplierAggregate() {
        return SupplierAggregate.DECLARED;
    }
}

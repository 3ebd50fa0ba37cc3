package org.bandtrail.supplystock.deliveries;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the delivery to the event store. */
@Configuration(proxyBeanMethods = false)
class DeliveryWiring {

    @Bean
    AggregateOf<?> deliveryAggregate() {
        return DeliveryAggregate.DECLARED;
    }
}

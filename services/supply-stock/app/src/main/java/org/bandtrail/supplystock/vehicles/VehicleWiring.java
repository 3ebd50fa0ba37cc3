package org.bandtrail.supplystock.vehicles;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the vehicle to the event store. */
@Configuration(proxyBeanMethods = false)
class VehicleWiring {

    @Bean
    AggregateOf<?> vehicleAggregate() {
        return VehicleAggregate.DECLARED;
    }
}

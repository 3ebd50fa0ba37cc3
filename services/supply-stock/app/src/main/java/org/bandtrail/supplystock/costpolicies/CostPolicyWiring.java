package org.bandtrail.supplystock.costpolicies;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the cost policy to the event store. */
@Configuration(proxyBeanMethods = false)
class CostPolicyWiring {

    @Bean
    AggregateOf<?> costPolicyAggregate() {
        return CostPolicyAggregate.DECLARED;
    }
}

package org.bandtrail.supplystock.grants;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares a grant to the event store. */
@Configuration(proxyBeanMethods = false)
class GrantWiring {

    @Bean
    AggregateOf<?> grantAggregate() {
        return GrantAggregate.DECLARED;
    }
}

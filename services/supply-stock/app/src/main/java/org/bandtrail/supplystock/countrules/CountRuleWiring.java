package org.bandtrail.supplystock.countrules;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the rules of counting to the event store. */
@Configuration(proxyBeanMethods = false)
class CountRuleWiring {

    @Bean
    AggregateOf<?> countRuleAggregate() {
        return CountRuleAggregate.DECLARED;
    }
}

package org.bandtrail.supplystock.reels;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the reel to the event store. */
@Configuration(proxyBeanMethods = false)
class ReelWiring {

    @Bean
    AggregateOf<?> reelAggregate() {
        return ReelAggregate.DECLARED;
    }
}

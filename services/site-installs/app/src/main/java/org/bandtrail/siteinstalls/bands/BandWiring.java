package org.bandtrail.siteinstalls.bands;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the band to the event store. */
@Configuration(proxyBeanMethods = false)
class BandWiring {

    @Bean
    AggregateOf<?> bandAggregate() {
        return BandAggregate.DECLARED;
    }
}

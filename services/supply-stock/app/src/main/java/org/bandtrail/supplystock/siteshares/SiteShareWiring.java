package org.bandtrail.supplystock.siteshares;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares who pays for a site to the event store. */
@Configuration(proxyBeanMethods = false)
class SiteShareWiring {

    @Bean
    AggregateOf<?> siteShareAggregate() {
        return SiteShareAggregate.DECLARED;
    }
}

package org.bandtrail.siteinstalls.sites;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the site to the event store. */
@Configuration(proxyBeanMethods = false)
class SiteWiring {

    @Bean
    AggregateOf<?> siteAggregate() {
        return SiteAggregate.DECLARED;
    }
}

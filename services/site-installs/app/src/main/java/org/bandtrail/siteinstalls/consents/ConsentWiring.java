package org.bandtrail.siteinstalls.consents;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the consent to the event store. */
@Configuration(proxyBeanMethods = false)
class ConsentWiring {

    @Bean
    AggregateOf<?> consentAggregate() {
        return ConsentAggregate.DECLARED;
    }
}

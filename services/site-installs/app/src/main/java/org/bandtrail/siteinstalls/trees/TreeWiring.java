package org.bandtrail.siteinstalls.trees;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the tree to the event store. */
@Configuration(proxyBeanMethods = false)
class TreeWiring {

    @Bean
    AggregateOf<?> treeAggregate() {
        return TreeAggregate.DECLARED;
    }
}

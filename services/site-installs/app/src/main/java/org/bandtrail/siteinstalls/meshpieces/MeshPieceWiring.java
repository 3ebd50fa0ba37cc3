package org.bandtrail.siteinstalls.meshpieces;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the piece of mesh to the event store. */
@Configuration(proxyBeanMethods = false)
class MeshPieceWiring {

    @Bean
    AggregateOf<?> meshPieceAggregate() {
        return MeshPieceAggregate.DECLARED;
    }
}

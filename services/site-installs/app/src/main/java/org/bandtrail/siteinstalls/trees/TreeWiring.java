package org.bandtrail.siteinstalls.trees;

import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.RevisionStep;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares the tree to the event store. */
@Configuration(proxyBeanMethods = false)
class TreeWiring {

    @Bean
    AggregateOf<?> treeAggregate() {
        return TreeAggregate.DECLARED;
    }

    /** Revision 1 knew no code, no position and no note. */
    @Bean
    RevisionStep treeRegisteredTwo() {
        return new RevisionStep("tree.registered", 1, tree -> {
            tree.putNull("speciesCode");
            tree.putNull("position");
            tree.put("note", "");
        });
    }

    /** Revision 1 knew neither the height above ground nor the band that was being fitted. */
    @Bean
    RevisionStep treeGirthMeasuredTwo() {
        return new RevisionStep("tree.girth-measured", 1, girth -> {
            girth.putNull("height");
            girth.putNull("whileFitting");
        });
    }
}

package org.bandtrail.supplystock.countrules;

import java.util.List;
import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.Decided;
import org.jspecify.annotations.Nullable;

/** Axon's view of the rules of counting. */
@AggregateRoot(type = "count-rules")
final class CountRuleAggregate {
    static final AggregateOf<CountRuleAggregate> DECLARED =
            new AggregateOf<>("count-rules", CountRuleAggregate.class, CountRuleCommand.class, CountRuleEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private CountRule countRule = CountRule.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<CountRuleEvent> handle(CountRuleCommand command) {
        return Decided.applied(countRule.decide(command));
    }

    @EventSourcingHandler
    void on(CountRuleEvent event) {
        storedId = DECLARED.storedId(event.programme());
        countRule = countRule.evolve(event);
    }
}

package org.bandtrail.eventstore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.axonframework.common.IdentifierFactory;
import org.axonframework.eventhandling.DomainEventMessage;
import org.axonframework.eventhandling.GenericDomainEventMessage;
import org.axonframework.eventhandling.GenericEventMessage;
import org.axonframework.messaging.unitofwork.CurrentUnitOfWork;

/**
 * Writes the first events of many new aggregates at once, for imports of hundreds of thousands. Sending a command for
 * each would keep every aggregate and event in memory until the commit; here a page is written as soon as it is given,
 * in the transaction of the {@link Work}, and told to the same {@link WhenAppended} listeners. The caller decides by
 * the same pure rules. An identity that is taken after all is refused by the database and the work is done again.
 */
public final class FirstEvents {
    private final JournalEngine engine;
    private final List<WhenAppended> listeners;

    FirstEvents(JournalEngine engine, List<WhenAppended> listeners) {
        this.engine = engine;
        this.listeners = List.copyOf(listeners);
    }

    /**
     * What a new aggregate begins with.
     *
     * @param identity as the command would name it
     * @param events decided for it, at least one
     */
    public record Beginning(Object identity, List<?> events) {}

    /**
     * Writes a page of beginnings.
     *
     * @throws IllegalStateException outside a work
     * @throws org.axonframework.modelling.command.ConcurrencyException if one of them exists; the work tries again
     */
    public void append(AggregateOf<?> aggregate, List<Beginning> beginnings) {
        if (!CurrentUnitOfWork.isStarted()) {
            throw new IllegalStateException(
                    "First events of %s come outside a work. Use Work.inOneTransaction.".formatted(aggregate.type()));
        }
        List<DomainEventMessage<?>> messages = new ArrayList<>();
        List<AppendedEvent> appended = new ArrayList<>();
        for (Beginning beginning : beginnings) {
            String storedId = aggregate.storedId(beginning.identity());
            for (int sequence = 0; sequence < beginning.events().size(); sequence++) {
                Object event = beginning.events().get(sequence);
                UUID eventId = UUID.fromString(IdentifierFactory.getInstance().generateIdentifier());
                messages.add(new GenericDomainEventMessage<>(
                        aggregate.type(),
                        storedId,
                        sequence,
                        event,
                        Map.of(),
                        eventId.toString(),
                        GenericEventMessage.clock.instant()));
                appended.add(new AppendedEvent(eventId, storedId, sequence, event));
            }
        }
        engine.appendEvents(messages);
        listeners.forEach(listener -> listener.appended(appended));
    }
}

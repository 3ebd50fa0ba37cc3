package org.bandtrail.eventexchange.notes;

import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateLifecycle;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.jspecify.annotations.Nullable;

class NoteAggregate {
    static final AggregateOf<NoteAggregate> DECLARED =
            new AggregateOf<>("note", NoteAggregate.class, NoteCommand.class, NoteEvent.class);

    @AggregateIdentifier
    private @Nullable String id; // null until the first event: an empty text would be taken for an identity

    private int lines;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    void handle(NoteCommand command) {
        switch (command) {
            case NoteCommand.Write write ->
                AggregateLifecycle.apply(
                        new NoteEvent.Written(write.noteId(), lines + 1, write.text(), write.happenedAt()));
        }
    }

    @EventSourcingHandler
    void on(NoteEvent event) {
        switch (event) {
            case NoteEvent.Written written -> {
                id = DECLARED.storedId(written.noteId());
                lines = written.number();
            }
        }
    }
}

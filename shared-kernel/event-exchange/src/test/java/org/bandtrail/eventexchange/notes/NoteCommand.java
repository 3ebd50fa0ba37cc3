package org.bandtrail.eventexchange.notes;

import java.time.Instant;
import org.axonframework.modelling.command.TargetAggregateIdentifier;

/** What may be asked of a note. */
public sealed interface NoteCommand {
    /** Write the next line. */
    record Write(@TargetAggregateIdentifier String noteId, String text, Instant happenedAt) implements NoteCommand {}
}

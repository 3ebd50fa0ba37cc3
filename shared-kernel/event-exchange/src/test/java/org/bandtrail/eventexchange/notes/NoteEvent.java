package org.bandtrail.eventexchange.notes;

import java.time.Instant;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;

/** What happened to a note. */
public sealed interface NoteEvent {
    /** A line was written; number counts from 1. */
    @StoredAs("note.written")
    @Revision("1")
    record Written(String noteId, int number, String text, Instant happenedAt) implements NoteEvent {}
}

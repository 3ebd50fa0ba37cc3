package org.bandtrail.eventexchange;

import java.time.Instant;

/** A contract event that the handler of {@link ReadingSide} does not know. */
public record NoteTorn(String noteId, Instant happenedAt) {
    public static final String TYPE = "test-notes.note-torn.v1";

    public String subject() {
        return "note/" + noteId;
    }
}

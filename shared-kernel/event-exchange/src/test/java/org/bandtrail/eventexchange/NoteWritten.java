package org.bandtrail.eventexchange;

import java.time.Instant;
import java.util.Objects;

/** A contract event as a service would publish it, made for the tests: number n of the notes on one subject. */
public record NoteWritten(String noteId, int number, String text, Instant happenedAt) {
    public static final String TYPE = "test-notes.note-written.v1";

    public NoteWritten {
        Objects.requireNonNull(noteId, "noteId");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(happenedAt, "happenedAt");
    }

    public String subject() {
        return "note/" + noteId;
    }
}

package org.bandtrail.testing.broken.words.util;

/** Says Event twice. */
public sealed interface ReelEvent {
    /** Says it again. */
    record ReceivedEvent() implements ReelEvent {}
}

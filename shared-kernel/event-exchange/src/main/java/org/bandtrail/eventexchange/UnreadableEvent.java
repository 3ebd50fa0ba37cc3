package org.bandtrail.eventexchange;

/**
 * A received event that does not fit what it claims to be. It stops its feed at that event: the message is what a
 * person sees there, so it names the field and the value.
 */
public class UnreadableEvent extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnreadableEvent(String message) {
        super(message);
    }

    public UnreadableEvent(String message, Throwable cause) {
        super(message, cause);
    }
}

package org.bandtrail.local.season;

/** Loading stopped: the message names the file, the row, the service and what it said. What was loaded stays loaded. */
public final class SeasonStopped extends RuntimeException {
    private static final long serialVersionUID = 1;

    SeasonStopped(String message) {
        super(message);
    }

    SeasonStopped(String message, Throwable cause) {
        super(message, cause);
    }
}

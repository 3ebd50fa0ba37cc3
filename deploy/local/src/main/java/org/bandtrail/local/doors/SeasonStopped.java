package org.bandtrail.local.doors;

/** Loading stopped: the message names the file, the row, the service and what it said. What was loaded stays loaded. */
public final class SeasonStopped extends RuntimeException {
    private static final long serialVersionUID = 1;

    public SeasonStopped(String message) {
        super(message);
    }

    public SeasonStopped(String message, Throwable cause) {
        super(message, cause);
    }
}

package org.bandtrail.eventexchange;

/**
 * Runs work so that all of it is kept or none: the reader's inbox row, its position, and whatever the handler did,
 * commands included. If the work throws, nothing of it remains and the same exception comes out.
 */
@FunctionalInterface
public interface InOneTransaction {
    /** Runs the work and commits, or rolls back and throws what the work threw. */
    void run(Runnable work);
}

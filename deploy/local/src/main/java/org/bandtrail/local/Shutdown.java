package org.bandtrail.local;

import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;

/**
 * What has been started so far and must be ended, in the opposite order. Ctrl-C may come at any moment of a start, so
 * every part registers itself here as soon as it is up, and closing twice, or from another thread, is allowed.
 */
final class Shutdown implements AutoCloseable {

    private final Deque<AutoCloseable> started = new ConcurrentLinkedDeque<>();

    /**
     * Remembers something that is running.
     *
     * @param part what to close
     * @param <T> its type
     * @return the same part
     */
    <T extends AutoCloseable> T of(T part) {
        started.push(part);
        return part;
    }

    /** Closes everything, the last started first; a part that fails to close does not keep the others open. */
    @Override
    public void close() {
        RuntimeException first = null;
        for (AutoCloseable part = started.poll(); part != null; part = started.poll()) {
            try {
                part.close();
            } catch (Exception e) {
                RuntimeException failure = new IllegalStateException("Not closed cleanly: " + part, e);
                if (first == null) {
                    first = failure;
                } else {
                    first.addSuppressed(failure);
                }
            }
        }
        if (first != null) {
            throw first;
        }
    }
}

package org.bandtrail.eventstore;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;

/** Wakes a thread that waits for news. A ring before the wait counts, so none is missed. */
final class Bell {
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition rung = lock.newCondition();
    private boolean ringing;

    void ring() {
        lock.lock();
        try {
            ringing = true;
            rung.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /**
     * Waits for a ring, at most so long.
     *
     * @return false if the thread was interrupted and should end
     */
    boolean await(long millis) {
        lock.lock();
        try {
            long left = TimeUnit.MILLISECONDS.toNanos(millis);
            while (!ringing && left > 0) {
                left = rung.awaitNanos(left);
            }
            ringing = false;
            return true;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        } finally {
            lock.unlock();
        }
    }

    /** Lets the rest of some milliseconds pass since a moment of {@link System#nanoTime}. */
    static void pause(long millis, long since) {
        long left = TimeUnit.MILLISECONDS.toNanos(millis) - (System.nanoTime() - since);
        if (left > 0) {
            LockSupport.parkNanos(left);
        }
    }
}

package org.bandtrail.eventexchange;

import java.time.Duration;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Wakes the readers that wait for something new in this process's outbox. It only shortens the wait: what another
 * replica publishes is seen by looking again, so a lost ring costs time and nothing else.
 */
public final class OutboxBell {
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition rung = lock.newCondition();
    private long rings;
    private boolean closed;

    /** Something was committed. */
    public void ring() {
        lock.lock();
        try {
            rings++;
            rung.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /** The process ends: nobody waits any longer. */
    public void close() {
        lock.lock();
        try {
            closed = true;
            rung.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /** Whether the process ends. */
    public boolean closed() {
        lock.lock();
        try {
            return closed;
        } finally {
            lock.unlock();
        }
    }

    /** Number of rings so far, to be given to {@link #await}. */
    public long rings() {
        lock.lock();
        try {
            return rings;
        } finally {
            lock.unlock();
        }
    }

    /**
     * Waits for a ring later than the given count, at most for the given time.
     *
     * @throws InterruptedException if the thread is asked to end
     */
    public void await(long ringsBefore, Duration atMost) throws InterruptedException {
        lock.lockInterruptibly();
        try {
            long nanos = atMost.toNanos();
            while (rings == ringsBefore && !closed && nanos > 0) {
                nanos = rung.awaitNanos(nanos);
            }
        } finally {
            lock.unlock();
        }
    }
}

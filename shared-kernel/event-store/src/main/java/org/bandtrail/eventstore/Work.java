package org.bandtrail.eventstore;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;
import org.axonframework.commandhandling.CommandExecutionException;
import org.axonframework.common.AxonException;
import org.axonframework.common.lock.DeadlockException;
import org.axonframework.common.transaction.TransactionManager;
import org.axonframework.messaging.unitofwork.CurrentUnitOfWork;
import org.axonframework.messaging.unitofwork.DefaultUnitOfWork;
import org.axonframework.modelling.command.ConcurrencyException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.TransientDataAccessException;

/**
 * One piece of work = one database transaction: commands, events, inbox and outbox rows and the receipt commit together
 * or not at all. Work that lost a race against another writer is done again from the start, a few times.
 */
public final class Work {
    private static final Logger LOG = LoggerFactory.getLogger(Work.class);
    private static final int ATTEMPTS = 12;
    private static final Duration LONGEST_PAUSE = Duration.ofMillis(40);

    private final TransactionManager transactions;
    private final CommandReceipts receipts;
    private final Runnable afterCommit;

    Work(TransactionManager transactions, CommandReceipts receipts, Runnable afterCommit) {
        this.transactions = transactions;
        this.receipts = receipts;
        this.afterCommit = afterCommit;
    }

    /**
     * Does the work once for this command id. The same id with the same content again returns the first answer and does
     * nothing.
     *
     * @param commandId made by the client, UUIDv7
     * @param content what was asked, a record that can be written as JSON
     * @param answer class of the answer, a record that can be written and read as JSON
     * @throws CommandReused if the id was used for other content
     * @throws Refusal if the work is refused; then the id is free again
     */
    public <A> A once(UUID commandId, Object content, Class<A> answer, Supplier<A> work) {
        byte[] fingerprint = receipts.fingerprint(content);
        return inOneTransaction(() -> receipts.once(commandId, fingerprint, answer, work));
    }

    /**
     * Writes down several command ids at once, before {@link #once} does their work one by one in the same transaction:
     * a device's delivery of five hundred records then asks the database once instead of five hundred times. Ids that
     * were used before are left alone; {@code once} deals with them.
     *
     * @param stamps command ids with what is asked under each
     * @throws IllegalStateException outside of work, because the ids would then outlive a refusal
     */
    public void claim(List<Stamp> stamps) {
        if (!CurrentUnitOfWork.isStarted()) {
            throw new IllegalStateException("Command ids are claimed inside the work that uses them.");
        }
        receipts.claim(stamps);
    }

    /**
     * A command id with what is asked under it.
     *
     * @param commandId made by the client, UUIDv7
     * @param content what was asked, a record that can be written as JSON
     */
    public record Stamp(UUID commandId, Object content) {}

    /**
     * Does the work in one transaction; inside other work it simply joins it.
     *
     * @throws Refusal if the work is refused; nothing is kept
     */
    public <T> T inOneTransaction(Supplier<T> work) {
        if (CurrentUnitOfWork.isStarted()) {
            return work.get();
        }
        for (int attempt = 1; ; attempt++) {
            try {
                T result = attempt(work::get);
                afterCommit.run();
                return result;
            } catch (RuntimeException failure) {
                if (attempt == ATTEMPTS || !lostRace(failure)) {
                    throw failure;
                }
                LOG.debug("Work lost a race, attempt {}: {}", attempt, failure.toString());
                pause(attempt);
            }
        }
    }

    private <T> T attempt(Callable<T> work) {
        var unit = DefaultUnitOfWork.startAndGet(null);
        try {
            unit.attachTransaction(transactions);
        } catch (RuntimeException noTransaction) {
            unit.rollback(noTransaction);
            throw noTransaction;
        }
        var result = unit.executeWithResult(work);
        if (!result.isExceptional()) {
            return result.getPayload();
        }
        if (result.exceptionResult() instanceof RuntimeException runtime) {
            throw runtime;
        }
        throw new IllegalStateException("Work failed: " + result.exceptionResult(), result.exceptionResult());
    }

    /** Whether doing the same again may succeed: another writer was first, or the database asked to try again. */
    private static boolean lostRace(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof ConcurrencyException
                    || cause instanceof DeadlockException
                    || cause instanceof TransientDataAccessException
                    || PostgresErrors.worthAnotherTry(cause)) {
                return true;
            }
            if (cause instanceof Refusal) {
                return false;
            }
            if (!(cause instanceof AxonException || cause instanceof CommandExecutionException)
                    && cause.getCause() == cause) {
                return false;
            }
        }
        return false;
    }

    private static void pause(int attempt) {
        try {
            Thread.sleep(ThreadLocalRandom.current().nextLong(1, Math.min(LONGEST_PAUSE.toMillis(), 4L * attempt) + 1));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted while waiting to try again; nothing was stored.", interrupted);
        }
    }
}

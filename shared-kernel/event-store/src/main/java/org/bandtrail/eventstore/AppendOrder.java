package org.bandtrail.eventstore;

import java.sql.SQLException;
import java.util.List;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Makes a log table readable by one remembered number. Positions are given out before commit, so a slower writer may
 * appear behind a reader's back. Writers hold the table's advisory lock, shared, from before their first position
 * (trigger {@code hold_append_order}); a reader that meets a gap takes it exclusively for a moment: then every writer
 * of a smaller position has ended, and what is still missing was rolled back. Without gaps nobody waits.
 *
 * <p>Writers that come while a reader waits queue behind it, so a reader has little patience: if the lock is not to be
 * had within {@link #PATIENCE_MILLIS} it steps back and is given the part before the gap. A slow writer delays the
 * readers of its table, never the other writers for longer than that. See decision 0003.
 */
public final class AppendOrder {
    /** How long a reader waits for the writers of a gap, in milliseconds. */
    public static final int PATIENCE_MILLIS = 250;

    private static final String LOCK_NOT_AVAILABLE = "55P03";

    private final JdbcClient jdbc;
    private final TransactionTemplate ownTransaction;
    private final String table;
    private final String column;

    /**
     * @param table a log table that has the trigger {@code hold_append_order}
     * @param column its position column, filled from a sequence
     */
    public AppendOrder(JdbcClient jdbc, PlatformTransactionManager transactions, String table, String column) {
        this.jdbc = jdbc;
        this.ownTransaction = new TransactionTemplate(transactions);
        this.ownTransaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.table = table;
        this.column = column;
    }

    /**
     * The last position up to which everything is final.
     *
     * @param after the reader's position
     * @param limit at most so many rows further
     * @return a position not before {@code after}; equal if there is nothing new, or nothing that is final yet
     */
    public long safeEnd(long after, int limit) {
        List<Long> positions = positions(after, limit);
        if (positions.isEmpty()) {
            return after;
        }
        long end = positions.getLast();
        if (end - after == positions.size() || writersHaveEnded()) {
            return end;
        }
        return endBeforeGap(after, positions);
    }

    private static long endBeforeGap(long after, List<Long> positions) {
        long end = after;
        for (long position : positions) {
            if (position != end + 1) {
                return end;
            }
            end = position;
        }
        return end;
    }

    private List<Long> positions(long after, int limit) {
        return jdbc.sql("SELECT %1$s FROM %2$s WHERE %1$s > ? ORDER BY %1$s LIMIT ?".formatted(column, table))
                .params(after, limit)
                .query(Long.class)
                .list();
    }

    /** Whether every writer that may have been given a smaller position has ended. */
    private boolean writersHaveEnded() {
        try {
            ownTransaction.executeWithoutResult(status -> {
                jdbc.sql("SELECT set_config('lock_timeout', ?, true)")
                        .param(PATIENCE_MILLIS + "ms")
                        .query(String.class)
                        .single();
                jdbc.sql("SELECT pg_advisory_xact_lock(hashtext(?)::bigint)")
                        .param(table)
                        .query((row, number) -> "held")
                        .single();
            });
            return true;
        } catch (DataAccessException failure) {
            if (failure.getRootCause() instanceof SQLException sql && LOCK_NOT_AVAILABLE.equals(sql.getSQLState())) {
                return false;
            }
            throw failure;
        }
    }
}

package org.bandtrail.eventstore;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Makes a log table readable by one remembered number. Positions are given out before commit, so a slower writer may
 * appear behind a reader's back. Writers hold the table's advisory lock, shared, from before their first position
 * (trigger {@code hold_append_order}); a reader that meets a gap takes it exclusively for a moment: then every writer
 * of a smaller position has ended, and what is still missing was rolled back. Without gaps nobody waits.
 */
public final class AppendOrder {
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
     * @return a position not before {@code after}; equal if there is nothing new
     */
    public long safeEnd(long after, int limit) {
        List<Long> positions = positions(after, limit);
        if (positions.isEmpty()) {
            return after;
        }
        long end = positions.getLast();
        if (end - after != positions.size()) {
            waitForWriters();
        }
        return end;
    }

    private List<Long> positions(long after, int limit) {
        return jdbc.sql("SELECT %1$s FROM %2$s WHERE %1$s > ? ORDER BY %1$s LIMIT ?".formatted(column, table))
                .params(after, limit)
                .query(Long.class)
                .list();
    }

    private void waitForWriters() {
        ownTransaction.executeWithoutResult(status -> jdbc.sql("SELECT pg_advisory_xact_lock(hashtext(?)::bigint)")
                .param(table)
                .query((row, number) -> "held")
                .single());
    }
}

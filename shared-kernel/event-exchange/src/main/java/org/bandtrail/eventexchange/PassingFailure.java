package org.bandtrail.eventexchange;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientException;
import java.util.Set;
import org.axonframework.common.AxonTransientException;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.RecoverableDataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.transaction.CannotCreateTransactionException;

/**
 * Tells failures that pass by themselves (the database or the network was away, two writers met) from those that need a
 * person. The first are tried again, the second stop a feed. Whatever is not known to pass counts as the second.
 */
final class PassingFailure {
    /** SQLSTATE classes: connection, transaction rollback, resources, operator intervention, system error. */
    private static final Set<String> PASSING_CLASSES = Set.of("08", "40", "53", "57", "58");

    private static final String LOCK_NOT_AVAILABLE = "55P03";

    private PassingFailure() {}

    /** Whether the failure, or anything that caused it, passes by itself. */
    static boolean is(Throwable failure) {
        for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (passes(cause)) {
                return true;
            }
        }
        return false;
    }

    private static boolean passes(Throwable cause) {
        return switch (cause) {
            case TransientDataAccessException passing -> true;
            case RecoverableDataAccessException passing -> true;
            case DataAccessResourceFailureException passing -> true;
            case CannotCreateTransactionException passing -> true;
            case AxonTransientException passing -> true;
            case FeedPositions.LostClaim passing -> true;
            case Feed.FeedUnreachable passing -> true;
            case SQLTransientException passing -> true;
            case SQLRecoverableException passing -> true;
            case SQLException sql -> passes(sql.getSQLState());
            case IOException passing -> true;
            default -> false;
        };
    }

    private static boolean passes(@Nullable String sqlState) {
        return sqlState != null
                && sqlState.length() == 5
                && (PASSING_CLASSES.contains(sqlState.substring(0, 2)) || LOCK_NOT_AVAILABLE.equals(sqlState));
    }
}

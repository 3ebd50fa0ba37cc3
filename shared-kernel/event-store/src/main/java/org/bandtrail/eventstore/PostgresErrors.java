package org.bandtrail.eventstore;

import java.sql.SQLException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What PostgreSQL's SQLState codes mean for us (PostgreSQL manual, appendix A). */
public final class PostgresErrors {
    /** serialization_failure, deadlock_detected, lock_not_available, unique_violation of an append. */
    private static final Set<String> RACES = Set.of("40001", "40P01", "55P03");

    /** connection exceptions, admin or crash shutdown, cannot connect now, too many connections. */
    private static final Set<String> AWAY = Set.of("57P01", "57P02", "57P03", "53300");

    private PostgresErrors() {}

    /** Another transaction was in the way; the same work may succeed when done again at once. */
    public static boolean worthAnotherTry(@Nullable Throwable failure) {
        return failure instanceof SQLException sql && sql.getSQLState() != null && RACES.contains(sql.getSQLState());
    }

    /** The server is not there just now; the same work may succeed later. */
    public static boolean away(@Nullable Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql
                    && sql.getSQLState() != null
                    && (sql.getSQLState().startsWith("08") || AWAY.contains(sql.getSQLState()))) {
                return true;
            }
        }
        return false;
    }
}

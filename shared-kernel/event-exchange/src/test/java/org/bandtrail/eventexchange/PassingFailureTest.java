package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.ConnectException;
import java.sql.SQLException;
import java.util.stream.Stream;
import org.axonframework.commandhandling.CommandExecutionException;
import org.axonframework.modelling.command.ConcurrencyException;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.UncategorizedSQLException;
import org.springframework.transaction.CannotCreateTransactionException;

/** SQLSTATE codes: PostgreSQL manual, appendix A. */
class PassingFailureTest {

    static Stream<Throwable> thatPass() {
        return Stream.of(
                new CannotAcquireLockException("lock"),
                new CannotCreateTransactionException("no connection"),
                new UncategorizedSQLException("commit", null, new SQLException("admin_shutdown", "57P01")),
                new IllegalStateException(new SQLException("connection_failure", "08006")),
                new SQLException("serialization_failure", "40001"),
                new SQLException("lock_not_available", "55P03"),
                new CommandExecutionException("raced", new ConcurrencyException("another was first")),
                new IllegalStateException(new ConnectException("refused")),
                new Feed.FeedUnreachable("503"));
    }

    static Stream<Throwable> thatNeedAPerson() {
        return Stream.of(
                new DuplicateKeyException("twice", new SQLException("unique_violation", "23505")),
                new SQLException("undefined_column", "42703"),
                new SQLException("no state"),
                new SQLException("odd state", "4"),
                new UnreadableEvent("quantity [x]"),
                new NoSuch("reel", "R-1"),
                new IllegalStateException("bug"),
                new NoClassDefFoundError("gone"));
    }

    @ParameterizedTest
    @MethodSource("thatPass")
    void a_failure_that_passes_by_itself_is_tried_again(Throwable failure) {
        assertThat(PassingFailure.is(failure)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("thatNeedAPerson")
    void any_other_failure_needs_a_person(Throwable failure) {
        assertThat(PassingFailure.is(failure)).isFalse();
    }
}

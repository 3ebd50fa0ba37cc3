package org.bandtrail.supplystock.periods;

import java.time.YearMonth;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/** What happened to the months of a set of books. Whoever posts entries to months listens to Closed and Reopened. */
public sealed interface PeriodEvent {
    /** The books. */
    BooksId books();

    /** The month it is about. */
    YearMonth month();

    /** A person answers for what a check found. */
    @StoredAs("period.check-signed")
    @Revision("1")
    record CheckSigned(BooksId books, YearMonth month, CheckFound found, String reason, PersonId by, Occurred occurred)
            implements PeriodEvent {}

    /**
     * The month is closed, and with it every month before it.
     *
     * @param checks what every check found, with the signature where it was not clean
     */
    @StoredAs("period.closed")
    @Revision("1")
    record Closed(BooksId books, YearMonth month, List<CheckPassed> checks, PersonId by, Occurred occurred)
            implements PeriodEvent {
        /** Keeps its own copy of the checks. */
        public Closed {
            checks = List.copyOf(checks);
        }
    }

    /** Somebody asks that the month be reopened. */
    @StoredAs("period.reopening-asked")
    @Revision("1")
    record ReopeningAsked(BooksId books, YearMonth month, String reason, PersonId by, Occurred occurred)
            implements PeriodEvent {}

    /**
     * The month is open again.
     *
     * @param closedThrough the last month that is still closed, null if none is
     * @param askedBy who asked; never the person who granted it
     */
    @StoredAs("period.reopened")
    @Revision("1")
    record Reopened(
            BooksId books,
            YearMonth month,
            @Nullable YearMonth closedThrough,
            String reason,
            PersonId askedBy,
            PersonId by,
            Occurred occurred)
            implements PeriodEvent {}

    /** The request to reopen is off the table. */
    @StoredAs("period.reopening-dropped")
    @Revision("1")
    record ReopeningDropped(BooksId books, YearMonth month, String reason, PersonId by, Occurred occurred)
            implements PeriodEvent {}
}

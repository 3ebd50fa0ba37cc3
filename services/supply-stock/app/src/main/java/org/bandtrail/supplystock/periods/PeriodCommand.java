package org.bandtrail.supplystock.periods;

import java.time.YearMonth;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of the months of a set of books. */
public sealed interface PeriodCommand {

    /** Wish: take what a check found on oneself, with a reason. Refused for a closed month and for a clean check. */
    record SignCheck(
            @TargetAggregateIdentifier BooksId books,
            YearMonth month,
            CheckFound found,
            String reason,
            PersonId by,
            Occurred occurred)
            implements PeriodCommand {}

    /**
     * Wish: close a month. Refused before it has ended, out of order, and while a check is neither clean nor signed.
     *
     * @param running the month that now runs
     * @param found what every check finds now
     */
    record Close(
            @TargetAggregateIdentifier BooksId books,
            YearMonth month,
            YearMonth running,
            List<CheckFound> found,
            PersonId by,
            Occurred occurred)
            implements PeriodCommand {}

    /** Wish: have the last closed month reopened. Refused for any other month and without a reason. */
    record AskToReopen(
            @TargetAggregateIdentifier BooksId books, YearMonth month, String reason, PersonId by, Occurred occurred)
            implements PeriodCommand {}

    /** Wish: reopen the month as asked. Refused to the person who asked. */
    record Reopen(@TargetAggregateIdentifier BooksId books, YearMonth month, PersonId by, Occurred occurred)
            implements PeriodCommand {}

    /** Wish: let the month stay closed; whoever asked may take it back, anybody else may say no. Needs a reason. */
    record DropReopening(
            @TargetAggregateIdentifier BooksId books, YearMonth month, String reason, PersonId by, Occurred occurred)
            implements PeriodCommand {}
}

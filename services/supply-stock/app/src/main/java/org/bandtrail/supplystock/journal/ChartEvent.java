package org.bandtrail.supplystock.journal;

import java.time.YearMonth;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.periods.BooksId;

/** What happened to the organisation's accounts. */
public sealed interface ChartEvent {
    /** The books. */
    BooksId books();

    /** From this month on ours are these accounts; what began in the same month before is replaced. */
    @StoredAs("chart.mapped")
    @Revision("1")
    record Mapped(BooksId books, YearMonth from, List<ChartAccount> accounts, PersonId by, Occurred occurred)
            implements ChartEvent {
        /** Keeps its own copy of the accounts. */
        public Mapped {
            accounts = List.copyOf(accounts);
        }
    }
}

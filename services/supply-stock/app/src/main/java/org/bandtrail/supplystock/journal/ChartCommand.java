package org.bandtrail.supplystock.journal;

import java.time.YearMonth;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.periods.BooksId;
import org.jspecify.annotations.Nullable;

/** What people ask about the organisation's accounts. */
public sealed interface ChartCommand {

    /**
     * Wish: from this month on ours are these accounts. Refused if one of the general six is missing, one is named
     * twice or is none of ours, or a closed month would change its accounts.
     *
     * @param closedThrough last closed month, null if none is
     */
    record MapAccounts(
            @TargetAggregateIdentifier BooksId books,
            YearMonth from,
            List<ChartAccount> accounts,
            @Nullable YearMonth closedThrough,
            PersonId by,
            Occurred occurred)
            implements ChartCommand {
        /** Keeps its own copy of the accounts. */
        public MapAccounts {
            accounts = List.copyOf(accounts);
        }
    }
}

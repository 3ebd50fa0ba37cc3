package org.bandtrail.frontdesk.neighbours.money;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about the journal and the organisation's accounts. */
public final class Accounts {
    private Accounts() {}

    /** One of our accounts and what it is in the organisation's books. */
    public record Account(String ours, String number, String name) {}

    /** A mapping and the month it begins in. */
    public record Version(YearMonth from, String by, Instant at, List<Account> accounts) {}

    /** The journal of a month; not empty unmapped means it is not exported. */
    public record Journal(YearMonth month, boolean closed, List<Line> lines, List<String> unmapped, List<Sum> sums) {
        /** Whether debits are credits in every currency. */
        public boolean balanced() {
            return sums.stream().allMatch(sum -> sum.debitMinor() == sum.creditMinor());
        }
    }

    /** One line in major units. */
    public record Line(
            int number,
            String what,
            String ours,
            @Nullable String account,
            @Nullable String accountName,
            String currency,
            BigDecimal debit,
            BigDecimal credit) {}

    /** Debits and credits of one currency in minor units. */
    public record Sum(String currency, long debitMinor, long creditMinor) {}
}

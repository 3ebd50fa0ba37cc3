package org.bandtrail.frontdesk.neighbours.money;

import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about budgets. Minor units of the budget's currency. */
public final class Budgeting {
    private Budgeting() {}

    /** A budget; grant, site and kind are null where it is for all. */
    public record Budget(
            String budgetId,
            String name,
            @Nullable String grantId,
            @Nullable String siteId,
            @Nullable String kind,
            YearMonth from,
            YearMonth through,
            Money amount,
            String counts,
            @Nullable String dropped) {
        /** Whether what is missing or written down counts as spent. */
        public boolean countsLost() {
            return counts.equals("CHARGED_AND_LOST");
        }
    }

    /** A budget beside what was spent and what is ordered. */
    public record Standing(
            Budget budget,
            long usedMinor,
            long scrappedMinor,
            long missingMinor,
            long writtenDownMinor,
            long actualMinor,
            long committedMinor,
            long leftMinor) {
        /** Part spent, in percent of the larger of the amount and what is spent and ordered together, for drawing. */
        public double actualPercent() {
            return Math.max(0, 100.0 * actualMinor / whole());
        }

        /** Part ordered, likewise. */
        public double committedPercent() {
            return 100.0 * committedMinor / whole();
        }

        /** Where the amount ends, likewise. */
        public double amountPercent() {
            return 100.0 * budget.amount().minor() / whole();
        }

        private long whole() {
            return Math.max(budget.amount().minor(), Math.max(actualMinor, 0) + committedMinor);
        }
    }

    /** A budget with what happened to it, the oldest first. */
    public record Whole(Standing standing, List<Happened> history) {}

    /** Something that happened to a budget. */
    public record Happened(
            String what, @Nullable Long minor, @Nullable String reason, String by, Instant at) {}
}

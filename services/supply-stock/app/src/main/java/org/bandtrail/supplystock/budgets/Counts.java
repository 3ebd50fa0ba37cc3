package org.bandtrail.supplystock.budgets;

import org.bandtrail.supplystock.spend.Outcome;

/** What a budget counts as spent. */
public enum Counts {
    /** What sites were charged: used and scrapped. */
    CHARGED,
    /** What sites were charged, and what is missing or was written down. */
    CHARGED_AND_LOST;

    /** Whether this counts. */
    boolean counts(Outcome outcome) {
        return this == CHARGED_AND_LOST || outcome == Outcome.USED || outcome == Outcome.SCRAPPED;
    }
}

package org.bandtrail.supplystock.books;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The trial of one month.
 *
 * @param period month, such as 2026-06
 * @param rows one page, by item, currency and place
 * @param next cursor of the next page, or null on the last
 * @param totals by kind and currency over all that is stock
 * @param law what was paid = what stock is worth + what accounts paid, of each currency
 * @param readAt when this was read
 */
public record Trial(
        String period, List<TrialRow> rows, @Nullable String next, List<Total> totals, List<Law> law, Instant readAt) {

    /** A month's stock of one kind in one currency; quantities in millimetres or pieces. */
    public record Total(
            String kind, String currency, long opening, long closing, long openingMinor, long closingMinor) {}

    /**
     * The law of the money up to the end of the month.
     *
     * @param paidMinor to suppliers
     * @param stockMinor still in stock, and on its way through a slitting
     * @param accountsMinor paid by sites, written off and written down
     * @param differenceMinor paid less the other two; not 0 means that a cent leaked
     */
    public record Law(String currency, long paidMinor, long stockMinor, long accountsMinor, long differenceMinor) {}
}

package org.bandtrail.supplystock.spend;

import java.time.YearMonth;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of whole months, as the ledger names them.
 *
 * @param from first month, for example {@code 2026-05}
 * @param through last month
 */
public record Months(String from, String through) {
    private static final String BEGINNING = "0000-01";
    private static final String END = "9999-12";

    /** From one month through another; null leaves an end open. */
    public static Months of(@Nullable YearMonth from, @Nullable YearMonth through) {
        return new Months(from == null ? BEGINNING : from.toString(), through == null ? END : through.toString());
    }

    /** Whether a month lies within. */
    public boolean contains(String month) {
        return month.compareTo(from) >= 0 && month.compareTo(through) <= 0;
    }
}

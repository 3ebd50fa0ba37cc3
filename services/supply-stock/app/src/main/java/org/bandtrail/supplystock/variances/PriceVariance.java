package org.bandtrail.supplystock.variances;

import org.jspecify.annotations.Nullable;

/**
 * What was paid for one item in one month, beside the standard. Minor units.
 *
 * @param month of the invoices' approval, UTC, such as {@code 2026-05}
 * @param quantity billed, millimetres or pieces; less what was credited
 * @param paidMinor what was paid for it before tax
 * @param standardMinor what the same would have cost by the standard, null if no standard is known
 * @param varianceMinor paid less standard, above zero unfavourable; null if no standard is known
 * @param byQuote lines whose standard is the supplier's quote; the others were priced by hand
 * @param lines invoice lines
 */
record PriceVariance(
        String month,
        String materialCode,
        String kind,
        String currency,
        long quantity,
        long paidMinor,
        @Nullable Long standardMinor,
        @Nullable Long varianceMinor,
        long byQuote,
        long lines) {
    /** Where the next page begins. */
    String key() {
        return month + " " + materialCode + " " + currency;
    }

    /** This and more of the same item, month and currency. */
    PriceVariance plus(PriceVariance more) {
        return new PriceVariance(
                month,
                materialCode,
                kind,
                currency,
                quantity + more.quantity,
                paidMinor + more.paidMinor,
                sum(standardMinor, more.standardMinor),
                sum(varianceMinor, more.varianceMinor),
                byQuote + more.byQuote,
                lines + more.lines);
    }

    /** What is not known on one side makes the whole unknown: half a standard is none. */
    private static @Nullable Long sum(@Nullable Long one, @Nullable Long other) {
        return one == null || other == null ? null : Long.valueOf(one + other);
    }
}

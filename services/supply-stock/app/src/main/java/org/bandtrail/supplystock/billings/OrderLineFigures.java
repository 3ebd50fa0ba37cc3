package org.bandtrail.supplystock.billings;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.invoicefiles.UnitCode.Measure;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/**
 * One line of a purchase with what came of it.
 *
 * @param measure what its quantities are counted in: millimetres or pieces
 * @param content millimetres or pieces of one package by the supplier's quote, null if it was not ordered in packages
 * @param currency of the order (ISO 4217)
 * @param ordered millimetres or pieces
 * @param orderedMinor what was ordered costs, minor units
 * @param received millimetres or pieces received and accepted, less what was sent back
 * @param receivedMinor what of it cost when it was received, minor units
 * @param waiting millimetres or pieces received and not accepted yet
 */
public record OrderLineFigures(
        SupplierId supplier,
        PurchaseId purchase,
        int line,
        String material,
        Measure measure,
        @Nullable Long content,
        String currency,
        long ordered,
        long orderedMinor,
        long received,
        long receivedMinor,
        long waiting) {

    /** A quantity of this line in words, with its unit. */
    public String words(long quantity) {
        return measure == Measure.PIECES
                ? Pieces.of(quantity).toString()
                : Length.ofMm(quantity).toString();
    }
}

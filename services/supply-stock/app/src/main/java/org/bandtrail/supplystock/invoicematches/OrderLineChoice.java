package org.bandtrail.supplystock.invoicematches;

import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * An order line that a line of an invoice may bill.
 *
 * @param kind TAPE, MESH or FASTENER
 * @param reference the supplier's number of the item by the quote, or null
 * @param ordered millimetres or pieces; so are received (and accepted) and billed
 * @param price of all that was ordered
 */
public record OrderLineChoice(
        String purchaseId,
        int line,
        String materialCode,
        String kind,
        @Nullable String reference,
        long ordered,
        long received,
        long billed,
        Money price) {}

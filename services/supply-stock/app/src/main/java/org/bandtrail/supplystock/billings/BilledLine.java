package org.bandtrail.supplystock.billings;

import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One line that was billed.
 *
 * @param quantity millimetres or pieces, negative on a credit note
 * @param net what the supplier is paid for it, before tax
 * @param atReceipt what the same goods cost when they were received
 * @param acceptedBecause why a price that differs was accepted, or null if it matched
 */
public record BilledLine(
        String invoiceLine,
        int purchaseLine,
        long quantity,
        Money net,
        Money atReceipt,
        Verdict verdict,
        @Nullable String acceptedBecause) {

    /** What the goods cost more than they were received at; negative if less. */
    public Money difference() {
        return net.minus(atReceipt);
    }
}

package org.bandtrail.supplystock.billings;

import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One line of an invoice as it is billed against a line of a purchase.
 *
 * @param quantity millimetres or pieces; negative if a credit note takes goods back, 0 if it only lowers a price
 * @param net what it costs after all allowances and before tax; negative on a credit note
 * @param acceptedBecause why a person accepts a price that differs, or null
 */
public record ToBill(
        String invoiceLine,
        int purchaseLine,
        long quantity,
        Money net,
        @Nullable String acceptedBecause) {}

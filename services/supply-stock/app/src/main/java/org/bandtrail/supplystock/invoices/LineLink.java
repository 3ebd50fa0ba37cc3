package org.bandtrail.supplystock.invoices;

import org.bandtrail.supplystock.purchases.PurchaseId;

/**
 * Which line of which purchase a line bills.
 *
 * @param quantity millimetres or pieces; negative if a credit note takes goods back, 0 if it only lowers the price
 */
public record LineLink(PurchaseId purchase, int purchaseLine, long quantity) {}

package org.bandtrail.supplystock.invoices;

/**
 * Which line of which purchase a line bills.
 *
 * @param quantity millimetres or pieces; negative if a credit note takes goods back, 0 if it only lowers the price
 */
public record LineLink(String purchase, int purchaseLine, long quantity) {}

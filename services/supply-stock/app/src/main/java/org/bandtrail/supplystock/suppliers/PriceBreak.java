package org.bandtrail.supplystock.suppliers;

/**
 * A price that holds from a quantity on.
 *
 * @param fromUnits order units, 1 or more
 * @param unitPrice minor units for one order unit, above zero; the currency stands with the quote
 */
public record PriceBreak(long fromUnits, long unitPrice) {}

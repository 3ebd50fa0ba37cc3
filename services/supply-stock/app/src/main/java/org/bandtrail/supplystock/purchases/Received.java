package org.bandtrail.supplystock.purchases;

/**
 * What came, or went back, of one order line.
 *
 * @param line of the order
 * @param units order units counted; 0 where the unit is a length
 * @param quantity millimetres measured or pieces counted
 */
public record Received(int line, long units, long quantity) {}

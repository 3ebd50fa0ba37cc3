package org.bandtrail.supplystock.journal;

/**
 * One of our accounts and what it is in the organisation's books.
 *
 * @param ours {@code stock}, {@code stock:TAPE}, {@code site}, {@code site:S-MILL}, {@code written-off},
 *     {@code written-down}, {@code slit} or {@code supplier}
 * @param number the organisation's number
 * @param name the organisation's name
 */
public record ChartAccount(String ours, String number, String name) {}

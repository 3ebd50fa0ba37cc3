package org.bandtrail.supplystock.books;

import com.fasterxml.jackson.annotation.JsonIgnore;

/**
 * One item at one place in one month: opening + in - out + adjusted = closing, in quantity and in value.
 *
 * @param key orders the rows and is the cursor of the next page
 * @param materialCode item; empty for what was used before its receipt was known
 * @param kind TAPE, MESH, FASTENER, or empty with the item
 * @param place a place, or {@code tree:}, {@code bag:}, {@code disposed:}, {@code slit:} for all of these
 * @param stock whether what is there is stock
 * @param opening quantities are millimetres, or pieces of fasteners
 */
public record TrialRow(
        @JsonIgnore String key,
        String materialCode,
        String kind,
        String currency,
        String place,
        boolean stock,
        long opening,
        long in,
        long out,
        long adjusted,
        long closing,
        long openingMinor,
        long inMinor,
        long outMinor,
        long adjustedMinor,
        long closingMinor) {}

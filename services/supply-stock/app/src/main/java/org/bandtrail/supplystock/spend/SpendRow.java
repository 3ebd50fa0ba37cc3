package org.bandtrail.supplystock.spend;

import com.fasterxml.jackson.annotation.JsonIgnore;
import org.jspecify.annotations.Nullable;

/**
 * What one site, tree or item cost, in minor units of one currency, and how much material that was. The total line of a
 * currency names no site, tree or item.
 *
 * @param key orders the rows and is the cursor of the next page
 * @param tapeMm millimetres of tape that left stock, pieces on trees, in bags and disposed together
 * @param pieces fasteners that left stock
 */
public record SpendRow(
        @JsonIgnore String key,
        @Nullable String siteId,
        @Nullable String treeId,
        @Nullable String materialCode,
        String currency,
        long tapeMinor,
        long meshMinor,
        long fastenerMinor,
        long totalMinor,
        long tapeMm,
        long meshMm,
        long pieces) {}

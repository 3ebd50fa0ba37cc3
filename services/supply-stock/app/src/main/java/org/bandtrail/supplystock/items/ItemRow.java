package org.bandtrail.supplystock.items;

import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One item as people see it; lengths in millimetres, counts in pieces.
 *
 * @param openingMm mesh opening, null for tape and fasteners
 * @param leadTimeSdDays standard deviation of the lead time
 */
public record ItemRow(
        String materialCode,
        MaterialKind kind,
        String name,
        @Nullable Long widthMm,
        @Nullable Long openingMm,
        @Nullable Long reelLengthMm,
        @Nullable Long packSize,
        Money unitCost,
        int leadTimeDays,
        int leadTimeSdDays,
        int serviceLevelPermille) {}

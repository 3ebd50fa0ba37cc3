package org.bandtrail.supplystock.custody;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.jspecify.annotations.Nullable;

/**
 * What became of all of one material that one person took out in a time.
 *
 * @param unit mm or pieces
 * @param kits how many kits it was part of
 */
record PersonSettled(
        String personId,
        @Nullable String materialCode,
        @Nullable String kind,
        String unit,
        long kits,
        @JsonUnwrapped Settlement settlement) {}

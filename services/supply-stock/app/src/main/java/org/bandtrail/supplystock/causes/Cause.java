package org.bandtrail.supplystock.causes;

import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * A likely cause.
 *
 * @param weight how well the evidence fits, 0 to 100; orders the causes and is no probability
 * @param evidence what in the books speaks for it, one sentence
 * @param other the other reel or batch that is meant, or null
 * @param through the place where the material really is if this is the cause, or null if the books cannot know
 * @param quantity how much of it, millimetres or pieces, above zero
 */
public record Cause(
        CauseKind kind,
        int weight,
        String evidence,
        @Nullable String other,
        @Nullable Place through,
        long quantity) {}

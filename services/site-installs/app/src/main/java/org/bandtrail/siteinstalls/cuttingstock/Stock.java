package org.bandtrail.siteinstalls.cuttingstock;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A reel that may be cut. Reels that may not be used, for example expired ones, are left out by the caller.
 *
 * @param id of the reel, once in a job
 * @param lengthMm what is left on it in mm, 1 to {@value CuttingJob#LONGEST_MM}
 * @param opened true for a part reel, false for a new reel that would have to be opened
 * @param expires last day of use, null if it keeps
 * @param costOrder order in which the reels were bought; the smaller is used first when all else is equal
 */
public record Stock(
        String id, long lengthMm, boolean opened, @Nullable LocalDate expires, long costOrder) {

    /** Refuses a reel without id or length. */
    public Stock {
        if (id.isBlank()) {
            throw new IllegalArgumentException("A reel of [%d mm] has no id. Give it one.".formatted(lengthMm));
        }
        CuttingJob.checkLength("reel", id, lengthMm);
    }
}

package org.bandtrail.supplystock.kitlists;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * A reel as the chooser sees it.
 *
 * @param place the bin where most of it lies, the depot itself if it lies loose, or set aside
 * @param there what can be used of it now
 * @param bought what was on it when it was new
 * @param expires last day its adhesive is good, or null if nobody knows
 * @param received when it came, or null if nobody knows
 * @param heldFor another kit that has it reserved now, or null
 */
public record ReelOnShelf(
        ReelId reel,
        Place place,
        Length there,
        Length bought,
        @Nullable LocalDate expires,
        @Nullable Instant received,
        @Nullable KitId heldFor) {

    /** Whether something was cut from it before. */
    public boolean part() {
        return there.compareTo(bought) < 0;
    }
}

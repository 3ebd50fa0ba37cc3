package org.bandtrail.siteinstalls.depotstock;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;

/**
 * A reel in a depot that may be used; what is set aside does not count.
 *
 * @param reelId the reel
 * @param bin where it lies, null if loose
 * @param lengthMm on it now, above zero
 * @param receivedMm on it when it came, at least what is on it now unless the books were corrected
 * @param expires last day its adhesive is good for, null if none is known
 * @param receivedAt when it came
 * @param costMinorPerKm what a kilometre of it cost on receipt, in the smallest unit of its currency; for an order
 *     "oldest cost first", not for the books
 * @param reservedFor the kit that keeps it, null if none does
 * @param reservedUntil when that lapses, null if no kit keeps it
 */
public record ReelThere(
        ReelId reelId,
        @Nullable String bin,
        long lengthMm,
        long receivedMm,
        @Nullable LocalDate expires,
        Instant receivedAt,
        long costMinorPerKm,
        @Nullable KitId reservedFor,
        @Nullable Instant reservedUntil) {

    /** Whether something was cut off it before. */
    public boolean opened() {
        return lengthMm < receivedMm;
    }

    /** Whether no kit keeps it at this moment. */
    public boolean free(Instant now) {
        return reservedUntil == null || !reservedUntil.isAfter(now);
    }

    /** Whether its adhesive is good on a day. */
    public boolean goodOn(LocalDate day) {
        return expires == null || !expires.isBefore(day);
    }
}

package org.bandtrail.siteinstalls.hostchecks;

import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;

/**
 * What the answers say.
 *
 * @param outcome whether it is a host
 * @param species the kind that fits best, null if none does
 * @param confidencePercent 0 to 100, see {@link HostKey#verdict}
 */
public record HostVerdict(Outcome outcome, @Nullable EppoCode species, int confidencePercent) {
    /** Whether the tree is a host. */
    public enum Outcome {
        /** A host of the pest. */
        HOST,
        /** Not a host, mostly one that looks like it. */
        NOT_HOST,
        /** The answers do not tell. */
        UNSURE
    }
}

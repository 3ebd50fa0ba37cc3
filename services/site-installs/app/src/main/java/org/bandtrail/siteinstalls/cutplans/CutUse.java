package org.bandtrail.siteinstalls.cutplans;

import org.jspecify.annotations.Nullable;

/**
 * What the pieces of a plan are for; the cut-length policy is chosen by it.
 *
 * @param device code of the kind of device; null in an order for the usual one of the policy, never in a plan
 * @param programme code of the programme, null if not said
 * @param pest EPPO code, null if not said
 */
public record CutUse(
        @Nullable String device,
        @Nullable String programme,
        @Nullable String pest) {

    /** The same for a certain kind of device. */
    CutUse with(String chosen) {
        return new CutUse(chosen, programme, pest);
    }
}

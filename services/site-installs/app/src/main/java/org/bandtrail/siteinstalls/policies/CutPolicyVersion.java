package org.bandtrail.siteinstalls.policies;

import java.time.LocalDate;
import org.bandtrail.siteinstalls.policies.CutPolicyEvent.CutLengthsPublished;

/**
 * One version of the policy.
 *
 * @param version 1, 2, 3 in the order of publishing
 * @param validFrom first day on which bands are cut by it
 * @param values the values
 * @param source where the values come from
 * @param reason why they were chosen
 */
public record CutPolicyVersion(int version, LocalDate validFrom, CutLengths values, String source, String reason) {

    /** The version an event brought. */
    static CutPolicyVersion of(CutLengthsPublished published) {
        return new CutPolicyVersion(
                published.version(), published.validFrom(), published.values(), published.source(), published.reason());
    }
}

package org.bandtrail.siteinstalls.policies;

import java.time.LocalDate;
import org.bandtrail.siteinstalls.policies.CutPolicyEvent.CutLengthsPublished;
import org.jspecify.annotations.Nullable;

/**
 * One version of the policy.
 *
 * @param version 1, 2, 3 in the order of publishing, over all scopes: the number names the version for ever
 * @param scope for which pest and programme it holds
 * @param validFrom first day on which bands are cut by it
 * @param validUntil last such day, null for no end
 * @param values the values
 * @param source where the values come from
 * @param reason why they were chosen
 */
public record CutPolicyVersion(
        int version,
        PolicyScope scope,
        LocalDate validFrom,
        @Nullable LocalDate validUntil,
        CutLengths values,
        String source,
        String reason) {

    /** A version of the house without an end. */
    public CutPolicyVersion(int version, LocalDate validFrom, CutLengths values, String source, String reason) {
        this(version, PolicyScope.HOUSE, validFrom, null, values, source, reason);
    }

    /** The version an event brought. */
    static CutPolicyVersion of(CutLengthsPublished published) {
        return new CutPolicyVersion(
                published.version(),
                published.scope(),
                published.validFrom(),
                published.validUntil(),
                published.values(),
                published.source(),
                published.reason());
    }

    /** Whether it holds on the day. */
    boolean holds(LocalDate day) {
        return !validFrom.isAfter(day) && (validUntil == null || !validUntil.isBefore(day));
    }
}

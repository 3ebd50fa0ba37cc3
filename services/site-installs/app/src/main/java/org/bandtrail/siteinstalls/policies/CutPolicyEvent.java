package org.bandtrail.siteinstalls.policies;

import java.time.LocalDate;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to the cut-length policy. */
public sealed interface CutPolicyEvent {
    /** The policy's identity. */
    String policyId();

    /**
     * A version was added.
     *
     * @param policyId {@link CutPolicy#ID}
     * @param version 1, 2, 3 in the order of publishing
     * @param values the values
     * @param validFrom first day on which bands are cut by them
     * @param source where the values come from
     * @param reason why they are chosen
     * @param by who decided
     * @param when when
     */
    @StoredAs("cut-policy.published")
    @Revision("1")
    record CutLengthsPublished(
            String policyId,
            int version,
            CutLengths values,
            LocalDate validFrom,
            String source,
            String reason,
            PersonId by,
            Occurred when)
            implements CutPolicyEvent {}
}

package org.bandtrail.siteinstalls.policies;

import java.time.LocalDate;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

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
     * @param scope for which pest and programme they hold; revision 1 knew only the whole house
     * @param validFrom first day on which bands are cut by them
     * @param validUntil last such day, null for no end
     * @param source where the values come from
     * @param reason why they are chosen
     * @param by who decided
     * @param when when
     */
    @StoredAs("cut-policy.published")
    @Revision("2")
    record CutLengthsPublished(
            String policyId,
            int version,
            CutLengths values,
            PolicyScope scope,
            LocalDate validFrom,
            @Nullable LocalDate validUntil,
            String source,
            String reason,
            PersonId by,
            Occurred when)
            implements CutPolicyEvent {}
}

package org.bandtrail.siteinstalls.policies;

import java.time.LocalDate;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/** What people ask of the cut-length policy. */
public sealed interface CutPolicyCommand {
    /** The policy's identity; there is one. */
    String policyId();

    /**
     * Adds a version.
     *
     * @param policyId {@link CutPolicy#ID}
     * @param values the values
     * @param scope for which pest and programme they hold
     * @param validFrom first day on which bands are cut by them
     * @param validUntil last such day, null for no end
     * @param source where the values come from, for example a publication
     * @param reason why they are chosen
     * @param by who decides
     * @param when when that was decided and written down
     */
    record PublishCutLengths(
            @TargetAggregateIdentifier String policyId,
            CutLengths values,
            PolicyScope scope,
            LocalDate validFrom,
            @Nullable LocalDate validUntil,
            String source,
            String reason,
            PersonId by,
            Occurred when)
            implements CutPolicyCommand {}
}

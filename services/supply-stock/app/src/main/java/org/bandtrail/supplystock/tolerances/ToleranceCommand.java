package org.bandtrail.supplystock.tolerances;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of the policy. */
public sealed interface ToleranceCommand {

    /** Wish: let these tolerances hold from now on. Refused without source and reason. */
    record Set(
            @TargetAggregateIdentifier String policy,
            Tolerances tolerances,
            String source,
            String reason,
            PersonId by,
            Occurred occurred)
            implements ToleranceCommand {}
}

package org.bandtrail.supplystock.countrules;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of the rules. */
public sealed interface CountRuleCommand {

    /** Wish: let these rules hold from now on. Refused without source and reason, or if they cannot be meant. */
    record Set(
            @TargetAggregateIdentifier String programme,
            CountRules rules,
            String source,
            String reason,
            PersonId by,
            Occurred occurred)
            implements CountRuleCommand {}
}

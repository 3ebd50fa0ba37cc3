package org.bandtrail.supplystock.costpolicies;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of the policy. */
public sealed interface CostPolicyCommand {
    /**
     * Wish: value fasteners so from a year on. Refused without a reason and once the year has entries.
     *
     * @param year calendar year of UTC in which it begins
     * @param begun whether the year has entries in the books
     */
    record Set(
            @TargetAggregateIdentifier CostPolicyId policy,
            int year,
            CostMethod method,
            String reason,
            boolean begun,
            PersonId by,
            Occurred occurred)
            implements CostPolicyCommand {}
}

package org.bandtrail.supplystock.costpolicies;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to the policy. */
public sealed interface CostPolicyEvent {
    /** What it is about. */
    CostPolicyId policy();

    /** From this year on fasteners are valued so. */
    @StoredAs("cost-policy.set")
    @Revision("1")
    record Set(CostPolicyId policy, int year, CostMethod method, String reason, PersonId by, Occurred occurred)
            implements CostPolicyEvent {}
}

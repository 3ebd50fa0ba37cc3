package org.bandtrail.supplystock.grants;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask about a grant. */
public sealed interface GrantCommand {

    /** Wish: enter a grant. Refused if its identity is taken or its terms make no sense. */
    record Register(@TargetAggregateIdentifier GrantId grantId, GrantTerms terms, PersonId by, Occurred occurred)
            implements GrantCommand {}

    /** Wish: other terms from now on, with a reason. Refused in another currency. */
    record ChangeTerms(
            @TargetAggregateIdentifier GrantId grantId, GrantTerms terms, String reason, PersonId by, Occurred occurred)
            implements GrantCommand {}
}

package org.bandtrail.supplystock.grants;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a grant. */
public sealed interface GrantEvent {
    /** The grant. */
    GrantId grantId();

    /** Entered with its terms. */
    @StoredAs("grant.registered")
    @Revision("1")
    record Registered(GrantId grantId, GrantTerms terms, PersonId by, Occurred occurred) implements GrantEvent {}

    /** Other terms were agreed. */
    @StoredAs("grant.terms-changed")
    @Revision("1")
    record TermsChanged(GrantId grantId, GrantTerms terms, String reason, PersonId by, Occurred occurred)
            implements GrantEvent {}
}

package org.bandtrail.siteinstalls.consents;

import java.time.LocalDate;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.contacts.ContactId;
import org.jspecify.annotations.Nullable;

/** What happened to consents. No name, phone or address is ever in here. */
public sealed interface ConsentEvent {
    /** The consent. */
    ConsentId consentId();

    /** An owner was asked; parts as in {@link ConsentCommand.Ask}. */
    @StoredAs("consent.asked")
    @Revision("1")
    record ConsentAsked(
            ConsentId consentId, SiteId siteId, ContactId contactId, ConsentScope scope, PersonId by, Occurred when)
            implements ConsentEvent {}

    /** An owner said yes; parts as in {@link ConsentCommand.Give}. */
    @StoredAs("consent.given")
    @Revision("1")
    record ConsentGiven(
            ConsentId consentId,
            SiteId siteId,
            ContactId contactId,
            ConsentScope scope,
            LocalDate from,
            @Nullable LocalDate until,
            String how,
            PersonId by,
            Occurred when)
            implements ConsentEvent {}

    /** An owner said no; parts as in {@link ConsentCommand.Decline}. */
    @StoredAs("consent.declined")
    @Revision("1")
    record ConsentDeclined(ConsentId consentId, String reason, PersonId by, Occurred when) implements ConsentEvent {}

    /**
     * A consent goes on.
     *
     * @param before the last day it had, null if it had no end
     * @param until the new last day, null if it has no end
     */
    @StoredAs("consent.renewed")
    @Revision("1")
    record ConsentRenewed(
            ConsentId consentId,
            @Nullable LocalDate before,
            @Nullable LocalDate until,
            String how,
            PersonId by,
            Occurred when)
            implements ConsentEvent {}

    /** An owner took it back; parts as in {@link ConsentCommand.Withdraw}. */
    @StoredAs("consent.withdrawn")
    @Revision("1")
    record ConsentWithdrawn(ConsentId consentId, LocalDate from, String reason, PersonId by, Occurred when)
            implements ConsentEvent {}
}

package org.bandtrail.siteinstalls.consents;

import java.time.LocalDate;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.contacts.ContactId;
import org.jspecify.annotations.Nullable;

/** What people enter about consents, in the order of a consent's life. */
public sealed interface ConsentCommand {
    /** The consent. */
    ConsentId consentId();

    /**
     * The owner was asked.
     *
     * @param consentId a free identity
     * @param siteId for which site
     * @param contactId who was asked
     * @param scope what was asked for
     * @param by who asked
     * @param when when
     */
    record Ask(
            @TargetAggregateIdentifier ConsentId consentId,
            SiteId siteId,
            ContactId contactId,
            ConsentScope scope,
            PersonId by,
            Occurred when)
            implements ConsentCommand {}

    /**
     * The owner said yes, asked before or not.
     *
     * @param consentId one that was asked, or a free identity
     * @param siteId for which site
     * @param contactId who gave it
     * @param scope what is allowed
     * @param from first day
     * @param until last day, null if it has no end
     * @param how for example a signed letter and where it is kept
     * @param by who entered it
     * @param when when it was given
     */
    record Give(
            @TargetAggregateIdentifier ConsentId consentId,
            SiteId siteId,
            ContactId contactId,
            ConsentScope scope,
            LocalDate from,
            @Nullable LocalDate until,
            String how,
            PersonId by,
            Occurred when)
            implements ConsentCommand {}

    /**
     * The owner said no.
     *
     * @param consentId one that was asked
     * @param reason as said, may be empty
     * @param by who entered it
     * @param when when
     */
    record Decline(@TargetAggregateIdentifier ConsentId consentId, String reason, PersonId by, Occurred when)
            implements ConsentCommand {}

    /**
     * The owner lets it go on.
     *
     * @param consentId one that was given
     * @param until the new last day, null if it has no end now
     * @param how as when given
     * @param by who entered it
     * @param when when
     */
    record Renew(
            @TargetAggregateIdentifier ConsentId consentId,
            @Nullable LocalDate until,
            String how,
            PersonId by,
            Occurred when)
            implements ConsentCommand {}

    /**
     * The owner took it back.
     *
     * @param consentId one that was given
     * @param from first day on which it no longer holds
     * @param reason as said, may be empty
     * @param by who entered it
     * @param when when
     */
    record Withdraw(
            @TargetAggregateIdentifier ConsentId consentId, LocalDate from, String reason, PersonId by, Occurred when)
            implements ConsentCommand {}
}

package org.bandtrail.siteinstalls.sites;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.jspecify.annotations.Nullable;

/** What people ask of sites. */
public sealed interface SiteCommand {
    /** The site. */
    SiteId siteId();

    /**
     * Adds a site to the register.
     *
     * @param siteId a free identity
     * @param name what people call it, 1 to 120 characters
     * @param point where it is, null if not known
     * @param accessNotes how to get there, empty if nothing needs saying
     * @param by who registers it
     * @param when when
     */
    record RegisterSite(
            @TargetAggregateIdentifier SiteId siteId,
            String name,
            @Nullable Point point,
            String accessNotes,
            PersonId by,
            Occurred when)
            implements SiteCommand {}
}

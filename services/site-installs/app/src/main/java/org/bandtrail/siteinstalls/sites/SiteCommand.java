package org.bandtrail.siteinstalls.sites;

import java.time.LocalDate;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.boundaries.Boundary;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
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

    /**
     * Corrects what is written down about a site; the old values stay in its history.
     *
     * @param siteId a registered site
     * @param details all of them, changed or not
     * @param by who corrects
     * @param when when
     */
    record CorrectSite(@TargetAggregateIdentifier SiteId siteId, SiteDetails details, PersonId by, Occurred when)
            implements SiteCommand {}

    /**
     * Draws or redraws the boundary.
     *
     * @param siteId a registered site
     * @param boundary as read by the boundary reader
     * @param by who drew it
     * @param when when
     */
    record OutlineSite(@TargetAggregateIdentifier SiteId siteId, Boundary boundary, PersonId by, Occurred when)
            implements SiteCommand {}

    /**
     * Says when a crew may be there.
     *
     * @param siteId a registered site
     * @param hours all rows, replacing those before
     * @param by who says so
     * @param when when
     */
    record SetHours(@TargetAggregateIdentifier SiteId siteId, OpeningHours hours, PersonId by, Occurred when)
            implements SiteCommand {}

    /**
     * Says what can hurt somebody there.
     *
     * @param siteId a registered site
     * @param hazards all of them, replacing those before
     * @param by who says so
     * @param when when
     */
    record SetHazards(@TargetAggregateIdentifier SiteId siteId, List<Hazard> hazards, PersonId by, Occurred when)
            implements SiteCommand {}

    /**
     * Closes a site for plans; what hangs there is still looked at and taken down.
     *
     * @param siteId a registered site
     * @param on first day of no new work
     * @param reason why, not empty
     * @param by who closes it
     * @param when when
     */
    record CloseSite(@TargetAggregateIdentifier SiteId siteId, LocalDate on, String reason, PersonId by, Occurred when)
            implements SiteCommand {}

    /**
     * Opens a closed site again.
     *
     * @param siteId a closed site
     * @param reason why, not empty
     * @param by who opens it
     * @param when when
     */
    record ReopenSite(@TargetAggregateIdentifier SiteId siteId, String reason, PersonId by, Occurred when)
            implements SiteCommand {}
}

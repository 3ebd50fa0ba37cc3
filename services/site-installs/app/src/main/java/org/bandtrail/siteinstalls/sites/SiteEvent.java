package org.bandtrail.siteinstalls.sites;

import java.time.LocalDate;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.boundaries.Boundary;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.jspecify.annotations.Nullable;

/** What happened to sites. */
public sealed interface SiteEvent {
    /** The site. */
    SiteId siteId();

    /**
     * A site is in the register.
     *
     * @param siteId its identity
     * @param name what people call it
     * @param point where it is, null if not known
     * @param accessNotes how to get there, empty if nothing was said
     * @param by who registered it
     * @param when when
     */
    @StoredAs("site.registered")
    @Revision("1")
    record SiteRegistered(
            SiteId siteId, String name, @Nullable Point point, String accessNotes, PersonId by, Occurred when)
            implements SiteEvent {}

    /**
     * What is written down about a site was corrected.
     *
     * @param siteId the site
     * @param was before
     * @param became after
     * @param by who corrected it
     * @param when when
     */
    @StoredAs("site.corrected")
    @Revision("1")
    record SiteCorrected(SiteId siteId, SiteDetails was, SiteDetails became, PersonId by, Occurred when)
            implements SiteEvent {}

    /**
     * A boundary was drawn.
     *
     * @param siteId the site
     * @param was the boundary before, null if there was none
     * @param boundary the boundary now
     * @param by who drew it
     * @param when when
     */
    @StoredAs("site.outlined")
    @Revision("1")
    record SiteOutlined(SiteId siteId, @Nullable Boundary was, Boundary boundary, PersonId by, Occurred when)
            implements SiteEvent {}

    /**
     * It was said when a crew may be there.
     *
     * @param siteId the site
     * @param was the hours before
     * @param hours the hours now
     * @param by who said so
     * @param when when
     */
    @StoredAs("site.hours-set")
    @Revision("1")
    record HoursSet(SiteId siteId, OpeningHours was, OpeningHours hours, PersonId by, Occurred when)
            implements SiteEvent {}

    /**
     * It was said what can hurt somebody there.
     *
     * @param siteId the site
     * @param was the hazards before
     * @param hazards the hazards now
     * @param by who said so
     * @param when when
     */
    @StoredAs("site.hazards-set")
    @Revision("1")
    record HazardsSet(SiteId siteId, List<Hazard> was, List<Hazard> hazards, PersonId by, Occurred when)
            implements SiteEvent {}

    /**
     * A site was closed for plans.
     *
     * @param siteId the site
     * @param on first day of no new work
     * @param reason why
     * @param by who closed it
     * @param when when
     */
    @StoredAs("site.closed")
    @Revision("1")
    record SiteClosed(SiteId siteId, LocalDate on, String reason, PersonId by, Occurred when) implements SiteEvent {}

    /**
     * A closed site is open again.
     *
     * @param siteId the site
     * @param reason why
     * @param by who opened it
     * @param when when
     */
    @StoredAs("site.reopened")
    @Revision("1")
    record SiteReopened(SiteId siteId, String reason, PersonId by, Occurred when) implements SiteEvent {}
}

package org.bandtrail.siteinstalls.sites;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
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
}

package org.bandtrail.siteinstalls.sites;

import org.jspecify.annotations.Nullable;

/**
 * What people write down about a site.
 *
 * @param name what people call it, 1 to 120 characters
 * @param point where it is, null if not known
 * @param accessNotes how to get there, empty if nothing needs saying
 */
public record SiteDetails(String name, @Nullable Point point, String accessNotes) {
    /** Strips blanks. */
    public SiteDetails {
        name = name.strip();
        accessNotes = accessNotes.strip();
    }
}

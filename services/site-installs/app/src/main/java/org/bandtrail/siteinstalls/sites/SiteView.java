package org.bandtrail.siteinstalls.sites;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One site as people see it.
 *
 * @param siteId its identity
 * @param name what people call it
 * @param lat latitude in degrees, WGS 84, null if not known
 * @param lon longitude in degrees, WGS 84, null if not known
 * @param accessNotes how to get there
 * @param trees registered trees
 * @param bandsUp bands that hang there now
 */
public record SiteView(
        String siteId,
        String name,
        @Nullable BigDecimal lat,
        @Nullable BigDecimal lon,
        String accessNotes,
        long trees,
        long bandsUp) {}

package org.bandtrail.siteinstalls.sites;

import java.math.BigDecimal;
import java.time.LocalDate;
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
 * @param areaDm2 geodesic area of its boundary in square decimetres, null without a boundary
 * @param hazards how many hazards are known there
 * @param closedOn first day of no new work, null while open
 */
public record SiteView(
        String siteId,
        String name,
        @Nullable BigDecimal lat,
        @Nullable BigDecimal lon,
        String accessNotes,
        long trees,
        long bandsUp,
        @Nullable Long areaDm2,
        long hazards,
        @Nullable LocalDate closedOn) {}

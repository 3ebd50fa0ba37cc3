package org.bandtrail.siteinstalls.sites;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.hazards.HazardKind;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * One site with all that is known.
 *
 * @param site as in the list
 * @param registeredAt when it came into the register
 * @param boundary coordinates of a GeoJSON polygon, null if nobody drew it
 * @param areaDm2 geodesic area in square decimetres, null without a boundary
 * @param perimeterMm once round in millimetres, null without a boundary
 * @param hours when a crew may be there
 * @param hazards what can hurt there, with cautions
 * @param closedOn first day of no new work, null while open
 * @param closedWhy why it is closed, empty while open
 * @param history every change with the value it replaced, newest first
 */
public record SiteWhole(
        SiteView site,
        Instant registeredAt,
        @Nullable JsonNode boundary,
        @Nullable Long areaDm2,
        @Nullable Long perimeterMm,
        OpeningHours hours,
        List<HazardHere> hazards,
        @Nullable LocalDate closedOn,
        String closedWhy,
        List<Step> history) {

    /** A hazard with what is known about its kind. */
    public record HazardHere(Hazard hazard, HazardKind kind) {}

    /**
     * One change.
     *
     * @param was the old value in words, empty if there was none
     * @param became the new value in words
     */
    public record Step(String what, Instant happenedAt, String by, String was, String became) {}
}

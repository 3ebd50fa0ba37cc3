package org.bandtrail.siteinstalls.sites;

import java.math.BigDecimal;
import java.util.List;
import org.bandtrail.siteinstalls.boundaries.Boundary;
import org.bandtrail.siteinstalls.boundaries.Corner;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The parts of a site that the read model keeps as JSON. */
final class SiteJson {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private SiteJson() {}

    /** Coordinates of a GeoJSON polygon: longitude first, then latitude, in degrees. */
    static String coordinates(Boundary boundary) {
        List<List<List<BigDecimal>>> rings = boundary.rings().stream()
                .map(ring -> ring.stream().map(SiteJson::position).toList())
                .toList();
        return JSON.writeValueAsString(rings);
    }

    private static List<BigDecimal> position(Corner corner) {
        return List.of(Point.degrees(corner.longitudeE7()), Point.degrees(corner.latitudeE7()));
    }

    static String write(Object value) {
        return JSON.writeValueAsString(value);
    }

    static @Nullable JsonNode node(@Nullable String text) {
        return text == null ? null : JSON.readTree(text);
    }

    static OpeningHours hours(String text) {
        return JSON.readValue(text, OpeningHours.class);
    }

    static List<Hazard> hazards(String text) {
        return JSON.readValue(text, new TypeReference<>() {});
    }
}

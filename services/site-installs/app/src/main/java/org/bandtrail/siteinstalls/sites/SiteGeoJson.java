package org.bandtrail.siteinstalls.sites;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * Sites as GeoJSON (RFC 7946).
 *
 * @param type always {@code FeatureCollection}
 * @param features one for each site with a place
 */
record SiteGeoJson(String type, List<Feature> features) {

    /**
     * A site.
     *
     * @param type always {@code Feature}
     * @param id the site
     * @param geometry its ground, or its point
     * @param properties its name
     */
    record Feature(String type, String id, Geometry geometry, Map<String, String> properties) {}

    /**
     * Where it is.
     *
     * @param type {@code Polygon} or {@code Point}
     * @param coordinates longitude before latitude, in degrees
     */
    record Geometry(String type, Object coordinates) {}

    static Feature feature(
            String siteId,
            String name,
            @Nullable JsonNode boundary,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude) {
        Geometry geometry = boundary != null
                ? new Geometry("Polygon", boundary)
                : new Geometry("Point", List.of(given(longitude), given(latitude)));
        return new Feature("Feature", siteId, geometry, Map.of("name", name));
    }

    private static BigDecimal given(@Nullable BigDecimal degrees) {
        if (degrees == null) {
            throw new IllegalStateException("A site without a boundary and without a point is not on the map.");
        }
        return degrees;
    }
}

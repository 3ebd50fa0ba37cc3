package org.bandtrail.siteinstalls.boundaries;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import tools.jackson.databind.JsonNode;

/** Reads a boundary from GeoJSON (RFC 7946), a Polygon or a Feature with one. */
public final class BoundaryReader {
    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final int MOST_CORNERS = 5_000;
    private static final int FEWEST_CORNERS = 4;
    private static final int E7 = 7;
    private static final int WIDEST_E7 = 10_000_000;
    private static final long LARGE_DM2 = 1_000_000_000L;
    private static final long SMALL_DM2 = 1_000;

    private BoundaryReader() {}

    /**
     * A boundary and what is to be said about it.
     *
     * @param boundary as it will be kept
     * @param notes what was corrected, and what is worth a second look
     */
    public record Read(Boundary boundary, List<String> notes) {}

    /**
     * Reads, judges and turns.
     *
     * @throws IllegalArgumentException naming the ring and the corner that is wrong, and what to do
     */
    public static Read read(JsonNode geoJson) {
        JsonNode geometry = polygonOf(geoJson);
        List<String> notes = new ArrayList<>();
        List<List<Corner>> rings = new ArrayList<>();
        for (JsonNode ring : geometry.path("coordinates")) {
            rings.add(turned(ring(ring, rings.size()), rings.size(), notes));
        }
        if (rings.isEmpty()) {
            throw new IllegalArgumentException("The polygon has no ring. Draw the boundary and try again.");
        }
        mustBeValid(rings);
        Boundary boundary = new Boundary(rings);
        notes.addAll(doubts(boundary));
        return new Read(boundary, List.copyOf(notes));
    }

    private static JsonNode polygonOf(JsonNode geoJson) {
        JsonNode geometry = geoJson.path("type").asString("").equals("Feature") ? geoJson.path("geometry") : geoJson;
        String type = geometry.path("type").asString("");
        if (!type.equals("Polygon")) {
            throw new IllegalArgumentException(
                    "The boundary is a [%s]. Give one GeoJSON Polygon, or a Feature with one; ground in several parts is several sites."
                            .formatted(type.isEmpty() ? "text without a type" : type));
        }
        return geometry;
    }

    private static List<Corner> ring(JsonNode ring, int number) {
        if (ring.size() < FEWEST_CORNERS || ring.size() > MOST_CORNERS) {
            throw new IllegalArgumentException(
                    "Ring %d has %d positions. A closed ring has from %d to %d, the last equal to the first."
                            .formatted(number + 1, ring.size(), FEWEST_CORNERS, MOST_CORNERS));
        }
        List<Corner> corners = new ArrayList<>();
        for (JsonNode position : ring) {
            corners.add(corner(position, number, corners.size()));
        }
        if (!corners.getFirst().equals(corners.getLast())) {
            throw new IllegalArgumentException(
                    "Ring %d is not closed: it begins at %s and ends at %s. Repeat its first position at the end."
                            .formatted(number + 1, words(corners.getFirst()), words(corners.getLast())));
        }
        return corners;
    }

    private static Corner corner(JsonNode position, int ring, int place) {
        if (position.size() < 2
                || !position.path(0).isNumber()
                || !position.path(1).isNumber()) {
            throw new IllegalArgumentException(
                    "Position %d of ring %d is %s. Give longitude, then latitude, as two numbers."
                            .formatted(place + 1, ring + 1, position));
        }
        int longitude = e7(position.path(0).decimalValue(), 180, "Longitude");
        int latitude = e7(position.path(1).decimalValue(), 90, "Latitude");
        return new Corner(latitude, longitude);
    }

    private static int e7(BigDecimal degrees, int most, String name) {
        if (degrees.abs().compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new IllegalArgumentException(
                    "%s [%s] is beyond %d degrees. GeoJSON gives longitude first, then latitude."
                            .formatted(name, degrees.toPlainString(), most));
        }
        return degrees.movePointRight(E7).setScale(0, RoundingMode.HALF_UP).intValueExact();
    }

    private static List<Corner> turned(List<Corner> ring, int number, List<String> notes) {
        boolean againstClock = Orientation.isCCW(plane(ring));
        if (againstClock == (number == 0)) {
            return ring;
        }
        notes.add(
                number == 0
                        ? "The outside ran with the clock and was turned; GeoJSON wants it against the clock."
                        : "Hole %d ran against the clock and was turned.".formatted(number));
        return ring.reversed();
    }

    private static void mustBeValid(List<List<Corner>> rings) {
        LinearRing[] holes = rings.stream()
                .skip(1)
                .map(ring -> PLANE.createLinearRing(plane(ring)))
                .toArray(LinearRing[]::new);
        Polygon polygon = PLANE.createPolygon(PLANE.createLinearRing(plane(rings.getFirst())), holes);
        TopologyValidationError error = new IsValidOp(polygon).getValidationError();
        if (error != null) {
            throw new IllegalArgumentException(
                    "The boundary is no clean shape (%s near %.6f N, %.6f E). Draw it so that no line crosses another."
                            .formatted(
                                    error.getMessage().toLowerCase(java.util.Locale.ROOT),
                                    error.getCoordinate().y,
                                    error.getCoordinate().x));
        }
        Boundary.Box box = new Boundary(rings).box();
        if ((long) box.eastE7() - box.westE7() > WIDEST_E7 || (long) box.northE7() - box.southE7() > WIDEST_E7) {
            throw new IllegalArgumentException(
                    "The boundary is more than one degree wide. A site is smaller; check latitude and longitude.");
        }
    }

    private static List<String> doubts(Boundary boundary) {
        long area = boundary.areaDm2();
        if (area > LARGE_DM2) {
            return List.of("The site has more than 10 square kilometres. Is every corner right?");
        }
        return area < SMALL_DM2
                ? List.of("The site has less than 10 square metres. Is every corner right?")
                : List.of();
    }

    private static Coordinate[] plane(List<Corner> ring) {
        return ring.stream()
                .map(corner -> new Coordinate(corner.longitude(), corner.latitude()))
                .toArray(Coordinate[]::new);
    }

    private static String words(Corner corner) {
        return "%s N, %s E"
                .formatted(BigDecimal.valueOf(corner.latitudeE7(), E7), BigDecimal.valueOf(corner.longitudeE7(), E7));
    }
}

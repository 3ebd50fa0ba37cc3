package org.bandtrail.siteinstalls.imports;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A FeatureCollection of points (RFC 7946: WGS 84, longitude first). The properties of all features together are the
 * columns; the point is in the columns {@code lat} and {@code lon}, whatever properties say. The text is walked
 * through twice, once for the names of the columns, one feature at a time.
 */
final class GeoJsonInventory implements InventoryFile {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String LAT = "lat";
    private static final String LON = "lon";
    private static final Set<String> WGS84 =
            Set.of("urn:ogc:def:crs:OGC:1.3:CRS84", "urn:ogc:def:crs:OGC::CRS84", "EPSG:4326");

    private final List<String> columns;
    private final List<String> notes;
    private final JsonParser features;
    private @Nullable JsonNode feature;
    private int row = 1;

    private GeoJsonInventory(List<String> columns, List<String> notes, JsonParser features) {
        this.columns = columns;
        this.notes = notes;
        this.features = features;
        this.feature = following(features, row);
    }

    /**
     * Opens a text and gathers the columns.
     *
     * @throws ImportRefused.FileUnreadable if it is no FeatureCollection, is broken, or is not in WGS 84
     */
    static GeoJsonInventory open(InventoryText text) {
        Set<String> columns = new LinkedHashSet<>(List.of(LAT, LON));
        int otherShapes = 0;
        int row = 1;
        JsonParser parser = atFeatures(text);
        for (JsonNode one = following(parser, row); one != null; one = following(parser, row)) {
            row = InventoryFile.counted(row + 1);
            columns.addAll(one.path("properties").propertyNames());
            if (one.has("id")) {
                columns.add("id");
            }
            otherShapes += point(one) == null ? 1 : 0;
        }
        List<String> notes = new ArrayList<>();
        if (text.note() != null) {
            notes.add(text.note());
        }
        if (otherShapes > 0) {
            notes.add("%d features are no points; they are read without a position.".formatted(otherShapes));
        }
        return new GeoJsonInventory(List.copyOf(columns), List.copyOf(notes), atFeatures(text));
    }

    private static JsonParser atFeatures(InventoryText text) {
        try {
            JsonParser parser = JSON.createParser(text.text());
            parser.nextToken();
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = parser.currentName();
                JsonToken value = parser.nextToken();
                if (name.equals("features") && value == JsonToken.START_ARRAY) {
                    return parser;
                }
                requireWgs84(name, parser.readValueAsTree());
            }
        } catch (JacksonException broken) {
            throw unreadable(1, broken);
        }
        throw new ImportRefused.FileUnreadable(1, "it is no GeoJSON FeatureCollection");
    }

    private static void requireWgs84(String name, JsonNode value) {
        String system = value.path("properties").path("name").asString("");
        if (name.equals("crs") && !WGS84.contains(system)) {
            throw new ImportRefused.FileUnreadable(
                    1, "its positions are in [%s]; GeoJSON is longitude and latitude in WGS 84".formatted(system));
        }
    }

    private static @Nullable JsonNode following(JsonParser parser, int row) {
        try {
            return parser.nextToken() == JsonToken.START_OBJECT ? parser.readValueAsTree() : null;
        } catch (JacksonException broken) {
            throw unreadable(row + 1, broken);
        }
    }

    private static ImportRefused.FileUnreadable unreadable(int row, JacksonException broken) {
        return new ImportRefused.FileUnreadable(row, "its JSON is broken: " + broken.getOriginalMessage());
    }

    /** Longitude and latitude, null if the feature is no point. */
    private static @Nullable JsonNode point(JsonNode feature) {
        JsonNode geometry = feature.path("geometry");
        JsonNode coordinates = geometry.path("coordinates");
        return geometry.path("type").asString("").equals("Point") && coordinates.size() >= 2 ? coordinates : null;
    }

    @Override
    public List<String> columns() {
        return columns;
    }

    @Override
    public List<String> notes() {
        return notes;
    }

    @Override
    public boolean more() {
        return feature != null;
    }

    @Override
    public Row next() {
        JsonNode now = feature;
        if (now == null) {
            throw new IllegalStateException("There is no further feature after row %d".formatted(row));
        }
        row = InventoryFile.counted(row + 1);
        JsonNode point = point(now);
        List<String> fields =
                columns.stream().map(column -> field(now, point, column)).toList();
        feature = following(features, row);
        return new Row(row, fields);
    }

    private static String field(JsonNode feature, @Nullable JsonNode point, String column) {
        JsonNode property = feature.path("properties").path(column);
        JsonNode value = switch (column) {
            case LON -> point == null ? property : point.path(0);
            case LAT -> point == null ? property : point.path(1);
            case "id" -> property.isMissingNode() ? feature.path("id") : property;
            default -> property;
        };
        if (value.isMissingNode() || value.isNull()) {
            return "";
        }
        return value.isNumber() ? value.decimalValue().toPlainString() : value.asString(value.toString());
    }
}

package org.bandtrail.frontdesk.sites;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.frontdesk.MapSettings;

/**
 * The square pictures behind a map. Tiles are cut in spherical Mercator (EPSG 3857): at zoom z there are 2^z columns of
 * longitude, and rows by the projected latitude asinh(tan(lat)). Each is laid where its own corners are, so it fits to
 * the drawing at its edges; inside a tile the two projections differ by less than a pixel at these scales.
 */
final class MapTiles {
    private static final int TILE_PIXELS = 256;
    private static final int DEEPEST = 19;
    private static final double WORLD = 360;
    private static final double MERCATOR_EDGE = 85.05;

    private MapTiles() {}

    /** One picture: its address and where it lies, in pixels. */
    record Tile(String address, String x, String y, String width, String height) {}

    /** The pictures that cover the drawing, at the zoom nearest to one picture pixel per pixel. */
    static List<Tile> behind(Projection projection, MapSettings settings) {
        double wide = projection.box().east() - projection.box().west();
        double ideal = Math.log(projection.width() / TILE_PIXELS * WORLD / wide) / Math.log(2);
        int zoom = Math.clamp(Math.round(ideal), 0, DEEPEST);
        List<Tile> tiles = new ArrayList<>();
        for (int x = column(projection.box().west(), zoom);
                x <= column(projection.box().east(), zoom);
                x++) {
            for (int y = row(projection.box().north(), zoom);
                    y <= row(projection.box().south(), zoom);
                    y++) {
                tiles.add(tile(projection, settings, zoom, x, y));
            }
        }
        return tiles;
    }

    private static Tile tile(Projection projection, MapSettings settings, int zoom, int x, int y) {
        double left = Double.parseDouble(projection.x(west(x, zoom)));
        double right = Double.parseDouble(projection.x(west(x + 1, zoom)));
        double top = Double.parseDouble(projection.y(north(y, zoom)));
        double bottom = Double.parseDouble(projection.y(north(y + 1, zoom)));
        return new Tile(
                settings.tile(zoom, x, y),
                Projection.number(left),
                Projection.number(top),
                Projection.number(right - left),
                Projection.number(bottom - top));
    }

    static int column(double lon, int zoom) {
        int columns = 1 << zoom;
        return Math.clamp((long) Math.floor((lon + WORLD / 2) / WORLD * columns), 0, columns - 1);
    }

    static int row(double lat, int zoom) {
        int rows = 1 << zoom;
        double radians = Math.toRadians(Math.clamp(lat, -MERCATOR_EDGE, MERCATOR_EDGE));
        double asinh = Math.log(Math.tan(radians) + 1 / Math.cos(radians));
        return Math.clamp((long) Math.floor((1 - asinh / Math.PI) / 2 * rows), 0, rows - 1);
    }

    private static double west(int column, int zoom) {
        return column * WORLD / (1 << zoom) - WORLD / 2;
    }

    private static double north(int row, int zoom) {
        double projected = Math.PI * (1 - 2.0 * row / (1 << zoom));
        return Math.toDegrees(Math.atan(Math.sinh(projected)));
    }
}

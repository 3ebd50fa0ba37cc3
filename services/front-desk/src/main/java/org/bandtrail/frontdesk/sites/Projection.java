package org.bandtrail.frontdesk.sites;

import java.util.Locale;
import org.bandtrail.frontdesk.neighbours.field.Mapped;

/**
 * Where a place of the earth stands in a drawing: latitude and longitude as straight lines, longitude shortened by the
 * cosine of the middle latitude. Over the few kilometres of a programme this is off by less than a pixel. Metres per
 * degree of latitude are taken as 111,132.95 (WGS 84 at 45 degrees, from memory), good to half a per cent for a scale.
 *
 * @param box the part of the earth that fills the drawing, in degrees
 * @param width of the drawing in pixels
 * @param height of the drawing in pixels
 */
public record Projection(Mapped.Box box, double width, double height) {
    private static final double METRES_PER_DEGREE = 111_132.95;
    private static final double MARGIN = 0.06;

    /** How much of a drawing's height or width is margin on one side. */
    static final double MARGIN_SHARE = MARGIN / (1 + 2 * MARGIN);

    private static final double SMALLEST_DEGREES = 0.0004;

    /** The drawing that shows all of a box with some margin, in the shape of the drawing. */
    public static Projection fitting(Mapped.Box inner, double width, double height) {
        double lat = (inner.south() + inner.north()) / 2;
        double lon = (inner.west() + inner.east()) / 2;
        double shrink = shrink(lat);
        double high = Math.max(inner.north() - inner.south(), SMALLEST_DEGREES) * (1 + 2 * MARGIN);
        double wide = Math.max((inner.east() - inner.west()) * shrink, SMALLEST_DEGREES) * (1 + 2 * MARGIN);
        double perPixel = Math.max(high / height, wide / width);
        return around(lat, lon, perPixel, width, height);
    }

    private static Projection around(double lat, double lon, double perPixel, double width, double height) {
        double halfHigh = perPixel * height / 2;
        double halfWide = perPixel * width / 2 / shrink(lat);
        return new Projection(
                new Mapped.Box(lat - halfHigh, lon - halfWide, lat + halfHigh, lon + halfWide), width, height);
    }

    private static double shrink(double lat) {
        return Math.max(0.05, Math.cos(Math.toRadians(lat)));
    }

    /** Across, from the left, in pixels. */
    public String x(double lon) {
        return number((lon - box.west()) / (box.east() - box.west()) * width);
    }

    /** Down, from the top, in pixels. */
    public String y(double lat) {
        return number((box.north() - lat) / (box.north() - box.south()) * height);
    }

    /** How many metres one pixel is. */
    public double metresPerPixel() {
        return (box.north() - box.south()) / height * METRES_PER_DEGREE;
    }

    /**
     * The same drawing moved and zoomed.
     *
     * @param right in widths
     * @param up in heights
     * @param zoom above 1 shows less of the earth
     */
    public Mapped.Box moved(double right, double up, double zoom) {
        double high = box.north() - box.south();
        double wide = box.east() - box.west();
        double lat = (box.south() + box.north()) / 2 + up * high;
        double lon = (box.west() + box.east()) / 2 + right * wide;
        return new Mapped.Box(
                lat - high / zoom / 2, lon - wide / zoom / 2, lat + high / zoom / 2, lon + wide / zoom / 2);
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}

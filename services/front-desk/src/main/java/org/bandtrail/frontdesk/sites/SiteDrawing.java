package org.bandtrail.frontdesk.sites;

import java.util.List;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.field.Mapped;

/**
 * The ground of one site, to scale, north up.
 *
 * @param path SVG path of the boundary with its holes
 * @param projection how the drawing lies on the earth
 */
public record SiteDrawing(String path, Projection projection) {
    private static final double WIDE = 480;
    private static final double HIGH = 300;

    /** Draws rings of longitude and latitude. */
    public static SiteDrawing of(List<List<List<Double>>> rings) {
        List<List<Double>> outside = rings.getFirst();
        Mapped.Box box = new Mapped.Box(
                outside.stream().mapToDouble(SiteDrawing::lat).min().orElseThrow(),
                outside.stream().mapToDouble(SiteDrawing::lon).min().orElseThrow(),
                outside.stream().mapToDouble(SiteDrawing::lat).max().orElseThrow(),
                outside.stream().mapToDouble(SiteDrawing::lon).max().orElseThrow());
        Projection projection = Projection.fitting(box, WIDE, HIGH);
        return new SiteDrawing(path(rings, projection), projection);
    }

    /** The SVG path of rings. */
    static String path(List<List<List<Double>>> rings, Projection projection) {
        return rings.stream()
                .map(ring -> ring.stream()
                        .map(corner -> projection.x(lon(corner)) + " " + projection.y(lat(corner)))
                        .collect(Collectors.joining("L", "M", "Z")))
                .collect(Collectors.joining());
    }

    private static double lat(List<Double> corner) {
        return corner.get(1);
    }

    private static double lon(List<Double> corner) {
        return corner.get(0);
    }
}

package org.bandtrail.frontdesk.sites;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Mapped;
import org.jspecify.annotations.Nullable;

/**
 * The map: sites, trees or clusters of trees in pixels, north up, with the boxes the zoom links lead to.
 *
 * @param projection how the drawing lies on the earth
 * @param grounds sites
 * @param trees trees one by one
 * @param clusters trees gathered
 * @param names names of sites, each above its ground
 * @param scale the bar that tells distances
 */
public record MapDrawing(
        Projection projection,
        List<Area> grounds,
        List<Dot> trees,
        List<Bunch> clusters,
        List<MapNames.Name> names,
        Scale scale) {
    private static final double WIDE = 960;
    private static final double HIGH = 600;
    private static final double LEAST_RADIUS = 10;
    private static final double MOST_RADIUS = 20;
    private static final double FEET_PER_METRE = 1 / 0.3048;
    private static final double BAR_AT_MOST = 200;

    /** A site: its ground as an SVG path, or null with only a point. */
    public record Area(Mapped.Site site, @Nullable String path, String x, String y) {}

    /** A tree. */
    public record Dot(Mapped.Tree tree, String x, String y) {}

    /** Trees gathered, with the radius of their circle and the address of the map that shows them closer. */
    public record Bunch(Mapped.Cluster cluster, String x, String y, String radius, String link) {}

    /** The bar: its length in pixels and what that is on the ground. */
    public record Scale(String pixels, String words) {}

    /** Draws what stands in the box; the drawing shows all of the box. */
    public static MapDrawing of(Mapped map, Mapped.Box shown, boolean metric) {
        Projection projection = Projection.fitting(shown, WIDE, HIGH);
        long most = map.clusters().stream().mapToLong(Mapped.Cluster::all).max().orElse(1);
        List<Area> grounds =
                map.sites().stream().map(site -> area(site, projection)).toList();
        return new MapDrawing(
                projection,
                grounds,
                map.trees().stream()
                        .map(tree -> new Dot(tree, projection.x(tree.lon()), projection.y(tree.lat())))
                        .toList(),
                map.clusters().stream()
                        .map(cluster -> new Bunch(
                                cluster,
                                projection.x(cluster.lon()),
                                projection.y(cluster.lat()),
                                radius(cluster.all(), most),
                                MapLinks.to(cluster.box())))
                        .toList(),
                MapNames.of(map.sites(), projection),
                scale(projection.metresPerPixel(), metric));
    }

    private static Area area(Mapped.Site site, Projection projection) {
        List<List<List<Double>>> boundary = site.boundary();
        if (boundary == null || boundary.isEmpty()) {
            double lat = site.lat() == null ? 0 : site.lat();
            double lon = site.lon() == null ? 0 : site.lon();
            return new Area(site, null, projection.x(lon), projection.y(lat));
        }
        List<List<Double>> outside = boundary.getFirst();
        double lat = outside.stream().mapToDouble(List::getLast).average().orElse(0);
        double lon = outside.stream().mapToDouble(List::getFirst).average().orElse(0);
        return new Area(site, SiteDrawing.path(boundary, projection), projection.x(lon), projection.y(lat));
    }

    /** The circle's area goes with the number of trees. */
    private static String radius(long all, long most) {
        return Projection.number(LEAST_RADIUS + (MOST_RADIUS - LEAST_RADIUS) * Math.sqrt((double) all / most));
    }

    private static Scale scale(double metresPerPixel, boolean metric) {
        double unitsPerPixel = metric ? metresPerPixel : metresPerPixel * FEET_PER_METRE;
        double most = unitsPerPixel * BAR_AT_MOST;
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double units = most >= 5 * power ? 5 * power : most >= 2 * power ? 2 * power : power;
        String words = metric && units >= 1000
                ? Math.round(units / 1000) + " km"
                : Math.round(units) + (metric ? " m" : " ft");
        return new Scale(Projection.number(units / unitsPerPixel), words);
    }
}

package org.bandtrail.siteinstalls.boundaries;

import java.util.List;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import net.sf.geographiclib.PolygonResult;

/**
 * The ground of a site.
 *
 * <p>Area and perimeter are those of the geodesic polygon on WGS 84. Source: C. F. F. Karney, Algorithms for geodesics,
 * Journal of Geodesy 87 (2013) 43-55, as computed by GeographicLib.
 *
 * @param rings closed rings, first corner = last corner; the first is the outside and runs against the clock, the
 *     others are holes and run with it (RFC 7946, 3.1.6)
 */
public record Boundary(List<List<Corner>> rings) {
    private static final double DM2_PER_M2 = 100;
    private static final double MM_PER_M = 1000;

    /** Keeps the rings as they are; {@link BoundaryReader} judges them. */
    public Boundary {
        rings = rings.stream().map(List::copyOf).toList();
    }

    /** The ground without its holes, in whole square decimetres (100 = 1 square metre), rounded. */
    public long areaDm2() {
        double outside = measured(rings.getFirst()).area;
        double holes =
                rings.stream().skip(1).mapToDouble(ring -> measured(ring).area).sum();
        return Math.round((Math.abs(outside) - Math.abs(holes)) * DM2_PER_M2);
    }

    /** Once round the outside, in whole millimetres, rounded. */
    public long perimeterMm() {
        return Math.round(measured(rings.getFirst()).perimeter * MM_PER_M);
    }

    private static PolygonResult measured(List<Corner> ring) {
        PolygonArea polygon = new PolygonArea(Geodesic.WGS84, false);
        ring.stream().skip(1).forEach(corner -> polygon.AddPoint(corner.latitude(), corner.longitude()));
        // Signed, so that a ring running with the clock counts its own inside and not the rest of the earth.
        return polygon.Compute(false, true);
    }

    /** The corner furthest to the south, west, north and east, as a box around the whole. */
    public Box box() {
        List<Corner> outside = rings.getFirst();
        return new Box(
                outside.stream().mapToInt(Corner::latitudeE7).min().orElseThrow(),
                outside.stream().mapToInt(Corner::longitudeE7).min().orElseThrow(),
                outside.stream().mapToInt(Corner::latitudeE7).max().orElseThrow(),
                outside.stream().mapToInt(Corner::longitudeE7).max().orElseThrow());
    }

    /** A box on the map, in ten-millionths of a degree. */
    public record Box(int southE7, int westE7, int northE7, int eastE7) {}
}

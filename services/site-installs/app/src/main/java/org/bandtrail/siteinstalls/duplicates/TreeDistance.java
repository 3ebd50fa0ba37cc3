package org.bandtrail.siteinstalls.duplicates;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.bandtrail.siteinstalls.sites.Point;

/**
 * How far two trees stand from each other: the length of the shortest line on the ellipsoid WGS 84, solved by C. F. F.
 * Karney's algorithm ("Algorithms for geodesics", Journal of Geodesy 87:43-55, 2013). Good to some nanometres between
 * any two points; positions themselves are kept to a centimetre.
 */
final class TreeDistance {
    private static final double E7 = 1e7;
    private static final double MM = 1_000;

    private TreeDistance() {}

    /** Between two points, in metres. */
    static double metres(Point one, Point other) {
        return metres(one.latitudeE7() / E7, one.longitudeE7() / E7, other.latitudeE7() / E7, other.longitudeE7() / E7);
    }

    /**
     * Between two points, in metres.
     *
     * @param latitude of the first, -90 to 90 degrees
     * @param longitude of the first, -180 to 180 degrees
     * @param otherLatitude of the second
     * @param otherLongitude of the second
     * @throws IllegalArgumentException naming a latitude off the earth
     */
    static double metres(double latitude, double longitude, double otherLatitude, double otherLongitude) {
        for (double each : new double[] {latitude, otherLatitude}) {
            if (!(Math.abs(each) <= 90)) {
                throw new IllegalArgumentException("Latitude [%s] must be from -90 to 90.".formatted(each));
            }
        }
        return Geodesic.WGS84.Inverse(latitude, longitude, otherLatitude, otherLongitude, GeodesicMask.DISTANCE).s12;
    }

    /** Between two points, in whole millimetres, rounded to the nearest. */
    static long mm(Point one, Point other) {
        return Math.round(metres(one, other) * MM);
    }
}

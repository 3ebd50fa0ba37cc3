package org.bandtrail.frontdesk.neighbours.field;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands in a box of the map. Trees come one by one, or gathered into clusters where there are many.
 *
 * @param box null if nothing has a place yet
 */
public record Mapped(
        @Nullable Box box,
        List<Site> sites,
        List<Tree> trees,
        List<Cluster> clusters,
        long treesInBox,
        long treesWithoutPlace) {

    /** A box in degrees. */
    public record Box(double south, double west, double north, double east) {}

    /** A site; the boundary is rings of longitude and latitude. */
    public record Site(
            String siteId,
            String name,
            @Nullable Double lat,
            @Nullable Double lon,
            @Nullable List<List<List<Double>>> boundary,
            long trees,
            long bandsUp) {}

    /** A tree with what hangs on it: NO_BAND, BAND_UP, DUE. */
    public record Tree(
            String treeId, String siteId, String tag, String species, double lat, double lon, String state) {}

    /** Trees gathered in one place, by what hangs on them. */
    public record Cluster(double lat, double lon, Box box, long noBand, long bandUp, long due) {
        /** All of them. */
        public long all() {
            return noBand + bandUp + due;
        }
    }
}

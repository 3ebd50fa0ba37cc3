package org.bandtrail.siteinstalls.maps;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * What stands in a box.
 *
 * @param box the box that was asked for, or the one around everything; null if nothing has a place yet
 * @param sites sites that touch the box
 * @param trees trees one by one, empty where they were gathered
 * @param clusters trees gathered on a grid, empty where they are given one by one
 * @param treesInBox how many trees stand in the box
 * @param treesWithoutPlace how many standing trees of the whole register have no position
 */
public record MapView(
        @Nullable Box box,
        List<SiteHere> sites,
        List<TreeHere> trees,
        List<Cluster> clusters,
        long treesInBox,
        long treesWithoutPlace) {

    /** A box in degrees, WGS 84. */
    public record Box(BigDecimal south, BigDecimal west, BigDecimal north, BigDecimal east) {}

    /**
     * A site.
     *
     * @param lat of its point, null if it has none
     * @param boundary coordinates of a GeoJSON polygon, null if nobody drew it
     */
    public record SiteHere(
            String siteId,
            String name,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            @Nullable JsonNode boundary,
            long trees,
            long bandsUp) {}

    /** What hangs on a tree. */
    public enum State {
        /** No band. */
        NO_BAND,
        /** A band is up. */
        BAND_UP,
        /** A band is up whose last day has come. */
        DUE
    }

    /** A tree. */
    public record TreeHere(
            String treeId, String siteId, String tag, String species, BigDecimal lat, BigDecimal lon, State state) {}

    /**
     * Trees of one cell of the grid.
     *
     * @param lat mean of the trees
     * @param lon mean of the trees
     * @param box around the trees, a little wider
     * @param noBand trees without a band
     * @param bandUp trees with a band
     * @param due trees with a band whose last day has come
     */
    public record Cluster(BigDecimal lat, BigDecimal lon, Box box, long noBand, long bandUp, long due) {}
}

package org.bandtrail.supplystock.recalls;

import org.bandtrail.kernel.DepotId;

/**
 * What a recall set aside of one reel or batch at one depot.
 *
 * @param holding {@code reel} or {@code batch}
 * @param quantity millimetres or pieces, above 0
 */
public record AsideLine(String holding, String id, DepotId depot, long quantity) {
    /** The same reel or batch at the same depot. */
    String key() {
        return holding + "/" + id + "/" + depot;
    }
}

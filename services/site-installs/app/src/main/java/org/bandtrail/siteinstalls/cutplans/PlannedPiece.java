package org.bandtrail.siteinstalls.cutplans;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.TreeId;

/**
 * One piece of a plan.
 *
 * @param treeId the tree it is for
 * @param position which band on the trunk, 1 is the lowest
 * @param length to cut, already rounded up to the crew's measuring tape
 */
public record PlannedPiece(
        TreeId treeId,
        int position,
        @JsonProperty("lengthMm") Length length) {

    /** Names the piece within its material: tree and position. */
    public String key() {
        return treeId.value() + "/" + position;
    }
}

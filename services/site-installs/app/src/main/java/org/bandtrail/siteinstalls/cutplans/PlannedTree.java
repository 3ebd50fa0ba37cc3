package org.bandtrail.siteinstalls.cutplans;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;

/**
 * A tree of a plan, in the order of the walk.
 *
 * @param treeId the tree
 * @param siteId where it stands
 * @param tag what is on its tag
 * @param girth the pieces are made for
 * @param bands how many bands it gets, 1 to 9
 * @param fasteners pins for all its bands together
 * @param others what else is counted for them, such as ties or funnels
 */
public record PlannedTree(
        TreeId treeId,
        SiteId siteId,
        String tag,
        @JsonProperty("girthMm") Length girth,
        int bands,
        long fasteners,
        long others) {}

package org.bandtrail.supplystock.kits;

import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.kitlists.KitRule;
import org.bandtrail.supplystock.kitlists.Pick;
import org.bandtrail.supplystock.kitlists.TreeNeed;

/**
 * What a list of trees takes and what would be taken for it.
 *
 * @param picks reels in the order they are chosen, then batches, oldest first
 * @param lacking what the depot cannot give
 * @param passedOver reels that may not be used
 * @param otherwise trees that do not get the reels wished for them
 */
record KitPlan(
        KitRule rule,
        List<TreeNeed> trees,
        List<Pick> picks,
        List<Lacking> lacking,
        List<PassedOver> passedOver,
        List<Otherwise> otherwise) {

    /**
     * What is lacking of one material.
     *
     * @param quantity millimetres, or pieces
     * @param trees trees that get nothing of it; empty for fasteners, which are not cut for a tree
     * @param sentence the same in words
     */
    record Lacking(String materialCode, MaterialKind kind, long quantity, List<String> trees, String sentence) {}

    /** A tree that is cut from another reel than was wished, with the reason in words. */
    record Otherwise(String treeId, MaterialKind kind, String why) {}

    /** A reel that may not be used, with the reason in words. */
    record PassedOver(String reelId, String why) {}
}

package org.bandtrail.siteinstalls.duplicates;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.TreeId;

/** Why nothing is decided of two trees. */
final class PairRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    /**
     * With the reason.
     *
     * @param one a tree
     * @param other another tree
     * @param why why not and what to do, whole sentences
     */
    PairRefused(TreeId one, TreeId other, String why) {
        super("Nothing is decided of trees [%s] and [%s]. %s".formatted(one, other, why));
    }

    @Override
    public String problem() {
        return "tree-pair-refused";
    }
}

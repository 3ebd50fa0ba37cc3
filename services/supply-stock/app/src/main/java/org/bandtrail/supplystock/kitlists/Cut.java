package org.bandtrail.supplystock.kitlists;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.TreeId;

/**
 * The pieces that one tree gets, all from one reel.
 *
 * @param pieces how many, 1 or more
 * @param each length of one of them
 */
public record Cut(TreeId tree, int pieces, Length each) {

    /** The length of all pieces together. */
    public Length whole() {
        return each.times(pieces);
    }
}

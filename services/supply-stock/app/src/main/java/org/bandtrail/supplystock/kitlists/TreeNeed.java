package org.bandtrail.supplystock.kitlists;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/**
 * What one tree of a list takes.
 *
 * @param girth of the trunk, or null if the list came with ready lengths
 * @param bands how many bands go on it, 1 or more
 * @param tape length of each piece of tape, zero if the kit has no tape
 * @param mesh length of each piece of mesh, zero if the kit has no mesh
 * @param fasteners for the whole tree, none if the kit has no fasteners
 */
public record TreeNeed(TreeId tree, @Nullable Length girth, int bands, Length tape, Length mesh, Pieces fasteners) {

    /** The pieces of one material on reels that this tree takes, or null if it takes none. */
    public @Nullable Cut cut(MaterialKind kind) {
        Length each = switch (kind) {
            case TAPE -> tape;
            case MESH -> mesh;
            case FASTENER -> Length.ZERO;
        };
        return each.isPositive() ? new Cut(tree, bands, each) : null;
    }
}

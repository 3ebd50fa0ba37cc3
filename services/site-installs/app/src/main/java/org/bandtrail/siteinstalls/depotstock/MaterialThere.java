package org.bandtrail.siteinstalls.depotstock;

import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;

/**
 * How much of a material lies in a depot: millimetres of tape and mesh, pieces of fasteners.
 *
 * @param material the supply item
 * @param kind what it is
 * @param there all that may be used or is reserved
 * @param reserved part of it that kits keep
 * @param setAside what is there besides, but not to be used
 * @param longestFree most on one reel that no kit keeps, or most free pieces of one batch
 * @param holdings how many reels or batches lie there
 */
public record MaterialThere(
        MaterialCode material,
        MaterialKind kind,
        long there,
        long reserved,
        long setAside,
        long longestFree,
        int holdings) {

    /** What a plan may count on. */
    public long free() {
        return Math.max(0, there - reserved);
    }
}

package org.bandtrail.supplystock.items;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Pieces;
import org.jspecify.annotations.Nullable;

/**
 * What an item is.
 *
 * @param name the name people use
 * @param width of tape or mesh, null for fasteners
 * @param opening of mesh: the widest gap an animal could use, null otherwise
 * @param reelLength usual length of a new reel, null for fasteners
 * @param packSize pieces in a pack, null for tape and mesh
 * @param unitCost usual cost of one reel or pack; what was really paid stands with each receipt
 */
public record ItemDescription(
        MaterialKind kind,
        String name,
        @Nullable Length width,
        @Nullable Length opening,
        @Nullable Length reelLength,
        @Nullable Pieces packSize,
        Money unitCost) {}

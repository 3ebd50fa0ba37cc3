package org.bandtrail.inspections.pieces;

import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;

/**
 * What was cut from one reel or counted out of one batch and stays together on one trunk.
 *
 * @param kind what can become of it: tape is never used again, mesh can be, whether it was a guard or the cloth or skirt
 *     round the trunk; both come from reels, fasteners from batches
 * @param id identity of the reel or batch
 * @param quantity millimetres for tape and mesh, pieces for fasteners; above 0
 */
public record Portion(MaterialKind kind, String id, long quantity) {
    public Portion {
        if (quantity <= 0) {
            throw new IllegalArgumentException("%s from [%s] measures [%d]. Write how much it was, more than nothing."
                    .formatted(kind, id, quantity));
        }
    }

    /** A piece of sticky tape, or of anything else from a reel that is not used again. */
    public static Portion tape(ReelId reel, Length length) {
        return new Portion(MaterialKind.TAPE, reel.value(), length.mm());
    }

    /** A piece of guard mesh, or of anything else from a reel that can be used again. */
    public static Portion mesh(ReelId reel, Length length) {
        return new Portion(MaterialKind.MESH, reel.value(), length.mm());
    }

    /** Fasteners of one batch. */
    public static Portion fasteners(BatchId batch, Pieces pieces) {
        return new Portion(MaterialKind.FASTENER, batch.value(), pieces.count());
    }
}

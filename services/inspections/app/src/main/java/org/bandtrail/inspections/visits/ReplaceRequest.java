package org.bandtrail.inspections.visits;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.inspections.bands.Replacement;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;

/**
 * What was renewed on a visit.
 *
 * @param tape new tape; the old piece goes into the bag
 * @param mesh new mesh; the old piece goes into the bag or back to the person
 * @param fasteners new fasteners; the old ones go into the bag
 * @param bagId the waste bag
 */
public record ReplaceRequest(
        @Nullable NewTape tape,
        @Nullable NewMesh mesh,
        @Nullable NewFasteners fasteners,

        @Schema(description = "The waste bag of the old pieces", example = "BAG-11") @Nullable
        String bagId) {

    /** New tape of one reel; lengths are text with a unit. */
    public record NewTape(
            String reelId, @Schema(example = "1250 mm") String length) {}

    /** New mesh of one reel and where the old mesh goes: {@code bag} (if nothing is said) or {@code reuse}. */
    public record NewMesh(
            String reelId,
            @Schema(example = "4 ft 6 in") String length,
            @Nullable String oldMesh) {}

    /** New fasteners of one batch. */
    public record NewFasteners(String batchId, long pieces) {}

    Replacement replacement() {
        List<Portion> putUp = new ArrayList<>();
        Onward oldMesh = Onward.BAG;
        if (tape != null) {
            putUp.add(Portion.tape(new ReelId(tape.reelId()), Length.parse(tape.length())));
        }
        if (mesh != null) {
            putUp.add(Portion.mesh(new ReelId(mesh.reelId()), Length.parse(mesh.length())));
            oldMesh = mesh.oldMesh() == null ? Onward.BAG : Onward.of(mesh.oldMesh());
        }
        if (fasteners != null) {
            putUp.add(Portion.fasteners(new BatchId(fasteners.batchId()), Pieces.of(fasteners.pieces())));
        }
        return new Replacement(putUp, oldMesh, bagId == null ? null : new BagId(bagId));
    }
}

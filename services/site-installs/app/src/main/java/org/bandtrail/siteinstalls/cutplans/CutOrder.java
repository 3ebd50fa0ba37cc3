package org.bandtrail.siteinstalls.cutplans;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.jspecify.annotations.Nullable;

/**
 * What somebody wants cut.
 *
 * @param planId a free identity
 * @param depot whose reels
 * @param day on which the bands go up
 * @param measure the crew's measuring tape
 * @param trees in the order of the walk
 * @param use against what, for whom and of which kind of device the pieces are
 * @param tape item of what is cut from tape, null if the device has no such part
 * @param mesh item of what is cut from mesh, null if it has no such part or no guard is cut
 * @param blade what one cut takes, zero for shears
 * @param patience how long to look for a better plan, for each material
 */
record CutOrder(
        CutPlanId planId,
        DepotId depot,
        LocalDate day,
        TapeMeasure measure,
        List<Wanted> trees,
        CutUse use,
        @Nullable MaterialCode tape,
        @Nullable MaterialCode mesh,
        Length blade,
        Duration patience) {

    /** The item of what is cut from this material, null if nothing is. */
    @Nullable
    MaterialCode item(MaterialKind kind) {
        return kind == MaterialKind.TAPE ? tape : mesh;
    }

    /**
     * A tree of the order.
     *
     * @param treeId the tree
     * @param bands how many, 1 to 9
     * @param girth other than the register's, null for that
     */
    record Wanted(TreeId treeId, int bands, @Nullable Length girth) {}
}

package org.bandtrail.siteinstalls.cutplans;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
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
 * @param tape item of the sticky tape
 * @param mesh item of the guard, null if no guard is cut
 * @param blade what one cut takes, zero for shears
 * @param patience how long to look for a better plan, for each material
 */
record CutOrder(
        CutPlanId planId,
        DepotId depot,
        LocalDate day,
        TapeMeasure measure,
        List<Wanted> trees,
        MaterialCode tape,
        @Nullable MaterialCode mesh,
        Length blade,
        Duration patience) {

    /**
     * A tree of the order.
     *
     * @param treeId the tree
     * @param bands how many, 1 to 9
     * @param girth other than the register's, null for that
     */
    record Wanted(TreeId treeId, int bands, @Nullable Length girth) {}
}

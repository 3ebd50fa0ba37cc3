package org.bandtrail.siteinstalls.cutplans;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.depotstock.DepotStock;
import org.bandtrail.siteinstalls.depotstock.ReelThere;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Binds the reels of a plan that is agreed, if they are still there as they were when it was drawn. */
@Component
final class ReelsOfPlan {
    private final CutPlans plans;
    private final DepotStock stock;
    private final Clock clock;

    ReelsOfPlan(CutPlans plans, DepotStock stock, Clock clock) {
        this.plans = plans;
        this.stock = stock;
        this.clock = clock;
    }

    /**
     * Binds them within the caller's transaction.
     *
     * @throws CutPlanRefused.Unknown if there is no such plan
     * @throws CutPlanRefused.ReelsTaken if another plan binds one of them, a kit keeps it, or it got shorter
     */
    void bind(CutPlanId planId) {
        CutPlanView.Whole plan = plans.whole(planId).orElseThrow(() -> new CutPlanRefused.Unknown(planId));
        List<ReelId> reels = new ArrayList<>();
        for (MaterialCuts cuts : plan.parts().materials()) {
            Map<ReelId, ReelThere> there = stock.reels(new DepotId(plan.plan().depotId()), cuts.material()).stream()
                    .collect(Collectors.toMap(ReelThere::reelId, Function.identity()));
            for (PlannedReel reel : cuts.reels()) {
                String wrong = wrong(reel, there.get(reel.reelId()), clock.instant());
                if (!wrong.isEmpty()) {
                    throw new CutPlanRefused.ReelsTaken(planId, wrong);
                }
                reels.add(reel.reelId());
            }
        }
        List<ReelId> taken = plans.bind(planId, reels);
        if (!taken.isEmpty()) {
            throw new CutPlanRefused.ReelsTaken(
                    planId,
                    "another plan binds %s"
                            .formatted(taken.stream().map(ReelId::value).collect(Collectors.joining(", "))));
        }
    }

    private static String wrong(PlannedReel planned, @Nullable ReelThere there, Instant now) {
        if (there == null) {
            return "reel %s is not in the depot any more".formatted(planned.reelId());
        }
        if (!there.free(now)) {
            return "kit %s keeps reel %s".formatted(there.reservedFor(), planned.reelId());
        }
        return there.lengthMm() < planned.length().mm()
                ? "reel %s has %s now, the plan counts on %s"
                        .formatted(
                                planned.reelId(), org.bandtrail.kernel.Length.ofMm(there.lengthMm()), planned.length())
                : "";
    }
}

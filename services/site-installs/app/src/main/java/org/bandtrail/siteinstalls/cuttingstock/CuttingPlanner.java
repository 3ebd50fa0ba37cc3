package org.bandtrail.siteinstalls.cuttingstock;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bandtrail.siteinstalls.cuttingstock.search.CutTask;
import org.bandtrail.siteinstalls.cuttingstock.search.Found;
import org.bandtrail.siteinstalls.cuttingstock.search.Search;

/**
 * Plans which piece comes off which reel. The result is never worse than cutting the longest piece first from the first
 * reel that has room, and says how far from the best possible it can be at most. The same job with the same seed gives
 * the same plan as long as patience does not end before the search does.
 */
public final class CuttingPlanner {

    private CuttingPlanner() {}

    /**
     * The best plan found, when it is proven or patience ends, whichever is first.
     *
     * @param job what is to be cut from what; pieces that cannot be cut are in the plan, with what to buy
     */
    public static CuttingPlan plan(CuttingJob job, Patience patience) {
        long longest = job.stock().stream().mapToLong(Stock::lengthMm).max().orElse(0);
        List<Piece> fitting = job.pieces().stream()
                .filter(piece -> piece.lengthMm() <= longest)
                .toList();
        List<Piece> tooLong = job.pieces().stream()
                .filter(piece -> piece.lengthMm() > longest)
                .toList();
        JobAsTask asTask = new JobAsTask(fitting, job.stock(), job.rules());
        Found found = Search.run(asTask.task(), job.seed(), patience);
        List<Piece> uncut = asTask.uncut(found.layout(), fitting);
        List<Piece> missing = new ArrayList<>(tooLong);
        missing.addAll(uncut);
        List<ReelCuts> reels = asTask.reels(found.layout(), fitting);
        CuttingBound bound = bound(asTask.task(), found, uncut);
        int opened = opened(job, reels);
        long weighed = reels.stream().mapToLong(ReelCuts::scrapMm).sum()
                + opened * job.rules().openingWorthMm();
        boolean proven = uncut.size() == bound.uncut() && weighed == bound.weighedScrapMm();
        return new CuttingPlan(
                reels,
                uncut,
                tooLong,
                Shortage.purchase(missing, job, patience),
                opened,
                weighed,
                bound,
                proven,
                proven && opened == bound.newReels(),
                found.cutOff());
    }

    private static int opened(CuttingJob job, List<ReelCuts> reels) {
        Set<String> used = reels.stream().map(ReelCuts::stockId).collect(Collectors.toSet());
        return (int) job.stock().stream()
                .filter(reel -> !reel.opened() && used.contains(reel.id()))
                .count();
    }

    /** Takes the one number of the search apart again; pieces count as lost there, and are taken off here. */
    private static CuttingBound bound(CutTask task, Found found, List<Piece> uncut) {
        long uncutBound = Math.clamp(found.bound() / task.uncutBase(), 0, uncut.size());
        if (uncutBound < uncut.size()) {
            return new CuttingBound(0, 0, (int) uncutBound);
        }
        long rest = found.bound() - uncutBound * task.uncutBase();
        // every piece stands in the number with its weight, whether it is cut or not
        long constant = task.wanted();
        long best = found.cost() - uncutBound * task.uncutBase();
        long bestLoss = best / task.scale();
        long loss = Math.max(0, Math.ceilDiv(rest - task.freshReels(), task.scale()));
        long opened = bestLoss * task.scale() >= rest ? 0 : rest - bestLoss * task.scale();
        return new CuttingBound(Math.max(0, loss - constant), (int) opened, (int) uncutBound);
    }
}

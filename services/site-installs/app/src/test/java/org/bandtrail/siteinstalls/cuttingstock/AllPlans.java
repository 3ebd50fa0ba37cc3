package org.bandtrail.siteinstalls.cuttingstock;

import java.util.ArrayList;
import java.util.List;

/**
 * The best there is for a tiny job, by trying every reel for every piece. Written from the rules alone, with nothing of
 * the planner's, to hold it against.
 */
final class AllPlans {
    private final CuttingJob job;
    private final List<List<Long>> on = new ArrayList<>();
    private Value best = new Value(Integer.MAX_VALUE, 0, 0);

    private AllPlans(CuttingJob job) {
        this.job = job;
        job.stock().forEach(reel -> on.add(new ArrayList<>()));
    }

    /** Fewest pieces uncut, then least scrap with what closed reels are worth, then fewest new reels. */
    static Value best(CuttingJob job) {
        AllPlans all = new AllPlans(job);
        all.from(0, 0);
        return all.best;
    }

    private void from(int piece, int uncut) {
        if (uncut > best.uncut()) {
            return;
        }
        if (piece == job.pieces().size()) {
            Value here = value(uncut);
            best = here.isBetterThan(best) ? here : best;
            return;
        }
        long length = job.pieces().get(piece).lengthMm();
        for (int reel = 0; reel < on.size(); reel++) {
            List<Long> cut = on.get(reel);
            cut.add(length);
            if (behind(reel) >= 0) {
                from(piece + 1, uncut);
            }
            cut.removeLast();
        }
        from(piece + 1, uncut + 1);
    }

    /** What is left behind the last piece, before the last cut. */
    private long behind(int reel) {
        List<Long> cut = on.get(reel);
        long pieces = cut.stream().mapToLong(Long::longValue).sum();
        return job.stock().get(reel).lengthMm()
                - pieces
                - (cut.size() - 1) * job.rules().bladeMm();
    }

    private Value value(int uncut) {
        long scrap = 0;
        int opened = 0;
        for (int reel = 0; reel < on.size(); reel++) {
            if (!on.get(reel).isEmpty()) {
                long rest = Math.max(0, behind(reel) - job.rules().bladeMm());
                scrap += rest < job.rules().usableFromMm() ? rest : 0;
                opened += job.stock().get(reel).opened() ? 0 : 1;
            }
        }
        return new Value(uncut, scrap + opened * job.rules().openingWorthMm(), opened);
    }

    /**
     * What a plan comes to on the levels that are proven.
     *
     * @param uncut pieces uncut, those too long for any reel among them
     * @param weighedScrapMm scrap, and what the reels opened are worth closed
     * @param newReels new reels opened
     */
    record Value(int uncut, long weighedScrapMm, int newReels) {

        boolean isBetterThan(Value other) {
            if (uncut != other.uncut) {
                return uncut < other.uncut;
            }
            return weighedScrapMm != other.weighedScrapMm
                    ? weighedScrapMm < other.weighedScrapMm
                    : newReels < other.newReels;
        }
    }
}

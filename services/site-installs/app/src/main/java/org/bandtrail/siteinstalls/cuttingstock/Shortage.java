package org.bandtrail.siteinstalls.cuttingstock;

import java.util.ArrayList;
import java.util.List;

/** What to buy for the pieces that the stock does not serve: few enough new reels, by a plan over new reels alone. */
final class Shortage {

    private Shortage() {}

    static Purchase purchase(List<Piece> missing, CuttingJob job, Patience patience) {
        long newReelMm = job.rules().newReelMm();
        List<Piece> fits =
                missing.stream().filter(piece -> piece.lengthMm() <= newReelMm).toList();
        List<Piece> longer =
                missing.stream().filter(piece -> piece.lengthMm() > newReelMm).toList();
        long longest = longer.stream().mapToLong(Piece::lengthMm).max().orElse(0);
        if (fits.isEmpty()) {
            return new Purchase(0, newReelMm, longer.size(), longest);
        }
        long blade = job.rules().bladeMm();
        List<Stock> bought = new ArrayList<>();
        for (int i = 0; i < fits.size(); i++) {
            bought.add(new Stock("to buy " + (i + 1), newReelMm + blade, false, null, i));
        }
        // nothing goes back, so that least scrap means fewest reels; pieces and reels longer by the blade fit alike
        List<Piece> longerByBlade = fits.stream()
                .map(piece -> new Piece(piece.id(), piece.lengthMm() + blade))
                .toList();
        CuttingRules rules = new CuttingRules(0, Integer.MAX_VALUE, 0);
        CuttingPlan plan = CuttingPlanner.plan(new CuttingJob(longerByBlade, bought, rules, job.seed()), patience);
        return new Purchase(plan.newReels(), newReelMm, longer.size(), longest);
    }
}

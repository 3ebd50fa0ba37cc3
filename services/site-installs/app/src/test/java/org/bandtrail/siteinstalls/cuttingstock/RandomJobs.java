package org.bandtrail.siteinstalls.cuttingstock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** One step of a random job: a piece or a reel more. The rules and the seed follow from the first lengths. */
record RandomJobs(boolean piece, long lengthMm, boolean opened, int cost) {

    /** Pieces of 1 to 60 and reels of 20 to 160, both short so that sums often meet exactly. */
    static RandomJobs any(RandomGenerator random) {
        boolean piece = random.nextInt(100) < 60;
        return new RandomJobs(
                piece,
                piece ? 1 + random.nextInt(60) : 20 + random.nextInt(140),
                random.nextBoolean(),
                random.nextInt(3));
    }

    static CuttingJob job(List<RandomJobs> steps) {
        List<Piece> pieces = new ArrayList<>();
        List<Stock> stock = new ArrayList<>();
        for (RandomJobs step : steps) {
            if (step.piece()) {
                pieces.add(new Piece("piece-" + pieces.size(), step.lengthMm()));
            } else {
                LocalDate expires = step.cost() == 0 ? null : LocalDate.of(2026, 1, 1 + step.cost());
                stock.add(new Stock("reel-" + stock.size(), step.lengthMm(), step.opened(), expires, step.cost()));
            }
        }
        long first = steps.isEmpty() ? 0 : steps.getFirst().lengthMm();
        long usable = first % 3 == 0 ? 1_000 : first % 40;
        CuttingRules rules = new CuttingRules(first % 4, usable, first % 2 == 0 ? 50 : 0, first % 5 == 0 ? 7 : 0);
        return new CuttingJob(pieces, stock, rules, first);
    }
}

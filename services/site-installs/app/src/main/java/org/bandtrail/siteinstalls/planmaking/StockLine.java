package org.bandtrail.siteinstalls.planmaking;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.depotstock.BatchThere;
import org.bandtrail.siteinstalls.depotstock.ReelThere;
import org.bandtrail.siteinstalls.workplans.PlanNeed;

/**
 * Whether a depot has enough of one material for a plan. Free is what no kit keeps, nobody set aside and whose adhesive
 * is good on the day; what other agreed plans need until that day is taken off first. Millimetres, or pieces of
 * fasteners; lengths are without the waste of cutting.
 *
 * @param needed by this plan
 * @param pieces how many are cut, or how many fasteners
 * @param free in the depot
 * @param plannedBefore needed by other agreed plans
 * @param missing what is lacking, 0 if nothing
 * @param longestPiece which one reel must have whole, 0 for fasteners
 * @param longestReel most on one free reel, 0 for fasteners
 * @param enough whether the plan can be served
 * @param sentence all of it in words
 */
record StockLine(
        MaterialCode material,
        MaterialKind kind,
        long needed,
        long pieces,
        long free,
        long plannedBefore,
        long missing,
        long longestPiece,
        long longestReel,
        boolean enough,
        String sentence) {

    /** Looks at the reels of a depot. */
    static StockLine ofReels(PlanNeed need, List<ReelThere> reels, long plannedBefore, LocalDate day, Instant now) {
        List<ReelThere> usable = reels.stream()
                .filter(reel -> reel.free(now) && reel.goodOn(day))
                .toList();
        long free = usable.stream().mapToLong(ReelThere::lengthMm).sum();
        long longest = usable.stream().mapToLong(ReelThere::lengthMm).max().orElse(0);
        return of(need, free, plannedBefore, longest);
    }

    /** Looks at the batches of a depot. */
    static StockLine ofBatches(PlanNeed need, List<BatchThere> batches, long plannedBefore) {
        return of(need, batches.stream().mapToLong(BatchThere::free).sum(), plannedBefore, 0);
    }

    private static StockLine of(PlanNeed need, long free, long plannedBefore, long longestReel) {
        long missing = Math.max(0, need.quantity() - Math.max(0, free - plannedBefore));
        boolean reaches = need.longest() <= longestReel;
        return new StockLine(
                need.material(),
                need.kind(),
                need.quantity(),
                need.pieces(),
                free,
                plannedBefore,
                missing,
                need.longest(),
                longestReel,
                missing == 0 && reaches,
                sentence(need, free, plannedBefore, missing, longestReel));
    }

    private static String sentence(PlanNeed need, long free, long plannedBefore, long missing, long longestReel) {
        String others = plannedBefore == 0
                ? ""
                : ", of which other plans need %s".formatted(amount(need.kind(), Math.min(free, plannedBefore)));
        String start = "%s: %s needed, %s free%s. "
                .formatted(need.material(), amount(need.kind(), need.quantity()), amount(need.kind(), free), others);
        if (missing > 0) {
            return start
                    + "%s are missing. Order it, move it from another depot, or plan fewer trees."
                            .formatted(amount(need.kind(), missing));
        }
        return need.longest() > longestReel
                ? start
                        + "No reel is long enough for the longest piece, %s; the longest has %s. Get a longer reel."
                                .formatted(Length.ofMm(need.longest()), Length.ofMm(longestReel))
                : start + "That suffices.";
    }

    private static String amount(MaterialKind kind, long quantity) {
        return kind.onReels() ? Length.ofMm(quantity).toString() : "%d pieces".formatted(quantity);
    }
}

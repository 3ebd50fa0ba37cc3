package org.bandtrail.siteinstalls.cuttingstock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * First-fit-decreasing as a person does it: part reels before new ones, of each those that expire first, then those
 * bought first; the longest piece first, from the first reel with room.
 */
final class FirstFit {

    private FirstFit() {}

    static AllPlans.Value of(CuttingJob job) {
        List<Stock> reels = new ArrayList<>(job.stock());
        reels.sort(Comparator.comparing((Stock reel) -> !reel.opened())
                .thenComparing(Stock::expires, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(Stock::costOrder)
                .thenComparing(Stock::id));
        long blade = job.rules().bladeMm();
        long[] behind = reels.stream().mapToLong(Stock::lengthMm).toArray();
        int[] cut = new int[behind.length];
        int uncut = 0;
        List<Piece> longestFirst = new ArrayList<>(job.pieces());
        longestFirst.sort(Comparator.comparing(Piece::lengthMm).reversed());
        for (Piece piece : longestFirst) {
            int reel = 0;
            while (reel < behind.length && behind[reel] - (cut[reel] > 0 ? blade : 0) < piece.lengthMm()) {
                reel++;
            }
            if (reel == behind.length) {
                uncut++;
            } else {
                behind[reel] -= piece.lengthMm() + (cut[reel]++ > 0 ? blade : 0);
            }
        }
        return value(job, reels, behind, cut, uncut);
    }

    private static AllPlans.Value value(CuttingJob job, List<Stock> reels, long[] behind, int[] cut, int uncut) {
        long scrap = 0;
        int opened = 0;
        for (int reel = 0; reel < behind.length; reel++) {
            if (cut[reel] > 0) {
                long rest = Math.max(0, behind[reel] - job.rules().bladeMm());
                scrap += rest < job.rules().usableFromMm() ? rest : 0;
                opened += reels.get(reel).opened() ? 0 : 1;
            }
        }
        return new AllPlans.Value(uncut, scrap + opened * job.rules().openingWorthMm(), opened);
    }
}

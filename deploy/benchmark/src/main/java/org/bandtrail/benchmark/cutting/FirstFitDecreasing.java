package org.bandtrail.benchmark.cutting;

import java.util.Comparator;
import java.util.List;
import org.bandtrail.siteinstalls.cuttingstock.CuttingJob;
import org.bandtrail.siteinstalls.cuttingstock.Piece;
import org.bandtrail.siteinstalls.cuttingstock.Stock;

/**
 * What a person does by hand: the longest piece first, from the first reel that has room, part reels first. Written
 * without the planner's code, to hold it against.
 *
 * @param uncut pieces that found no reel
 * @param scrapMm rests too short to be of use, in mm
 * @param bladeMm what the cuts take, in mm
 * @param newReels new reels opened
 */
record FirstFitDecreasing(int uncut, long scrapMm, long bladeMm, int newReels) {

    static FirstFitDecreasing of(CuttingJob job) {
        List<Stock> stock = job.stock();
        long blade = job.rules().bladeMm();
        long[] left = stock.stream().mapToLong(Stock::lengthMm).toArray();
        long[] cuts = new long[left.length];
        boolean[] used = new boolean[left.length];
        int uncut = 0;
        List<Piece> longestFirst = job.pieces().stream()
                .sorted(Comparator.comparing(Piece::lengthMm).reversed())
                .toList();
        for (Piece piece : longestFirst) {
            int reel = 0;
            while (reel < left.length && left[reel] < piece.lengthMm()) {
                reel++;
            }
            if (reel == left.length) {
                uncut++;
                continue;
            }
            used[reel] = true;
            left[reel] -= piece.lengthMm();
            long cut = Math.min(blade, left[reel]);
            left[reel] -= cut;
            cuts[reel] += cut;
        }
        long scrap = 0;
        long taken = 0;
        int opened = 0;
        for (int reel = 0; reel < left.length; reel++) {
            if (used[reel]) {
                scrap += left[reel] < job.rules().usableFromMm() ? left[reel] : 0;
                taken += cuts[reel];
                opened += stock.get(reel).opened() ? 0 : 1;
            }
        }
        return new FirstFitDecreasing(uncut, scrap, taken, opened);
    }
}

package org.bandtrail.siteinstalls.cuttingstock;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is to be cut from what. The order of the pieces is the order of the crew's walk and is kept on each reel.
 *
 * @param pieces of one material, at most {@value #MOST}
 * @param stock the reels of that material, at most {@value #MOST}
 * @param rules what counts as lost
 * @param seed the search tries things in an order drawn from it: same job and seed, same plan
 */
public record CuttingJob(List<Piece> pieces, List<Stock> stock, CuttingRules rules, long seed) {

    /** The longest piece or reel there can be, in mm (1 km). */
    public static final long LONGEST_MM = 1_000_000;

    /** The most pieces, and the most reels, of one job. */
    public static final int MOST = 10_000;

    /** Refuses lists that are too long or name a piece or reel twice. */
    public CuttingJob {
        pieces = List.copyOf(pieces);
        stock = List.copyOf(stock);
        onceEach("pieces", pieces.stream().map(Piece::id).toList());
        onceEach("reels", stock.stream().map(Stock::id).toList());
    }

    static void checkLength(String what, String id, long lengthMm) {
        if (lengthMm < 1 || lengthMm > LONGEST_MM) {
            throw new IllegalArgumentException("The length of %s [%s] is [%d mm], it must be 1 to %d mm."
                    .formatted(what, id, lengthMm, LONGEST_MM));
        }
    }

    private static void onceEach(String what, List<String> ids) {
        if (ids.size() > MOST) {
            throw new IllegalArgumentException(
                    "[%d] %s are more than %d. Cut them in several jobs.".formatted(ids.size(), what, MOST));
        }
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new IllegalArgumentException(
                        "[%s] stands twice among the %s. Give each its own id.".formatted(id, what));
            }
        }
    }
}

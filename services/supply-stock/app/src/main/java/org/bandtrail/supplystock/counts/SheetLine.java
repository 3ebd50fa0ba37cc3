package org.bandtrail.supplystock.counts;

import org.bandtrail.supplystock.costs.PieceCost;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * One line of the sheet as it was frozen: what should be at the place.
 *
 * @param holding {@code reel} or {@code batch}
 * @param id identity of the reel or batch
 * @param place the depot or the bin
 * @param material what it is, null while its receipt is not in the books
 * @param kind TAPE, MESH or FASTENER, null while its receipt is not in the books
 * @param book the frozen figure, millimetres or pieces; 0 for what was found and not on the sheet
 * @param bought quantity of the receipt, millimetres or pieces, 0 while it is not in the books
 * @param costMinor cost of the receipt in minor units
 * @param currency ISO 4217, null while its receipt is not in the books
 * @param elsewhere where the books have what was found here, or null if nowhere in stock
 * @param quantityElsewhere how much the books have there
 */
public record SheetLine(
        String holding,
        String id,
        Place place,
        @Nullable String material,
        @Nullable String kind,
        long book,
        long bought,
        long costMinor,
        @Nullable String currency,
        @Nullable Place elsewhere,
        long quantityElsewhere) {
    /** Which line it is. */
    public Key key() {
        return new Key(holding, id, place);
    }

    /** Whether quantities are pieces, not millimetres. */
    public boolean pieces() {
        return holding.equals("batch");
    }

    /** What this quantity cost, in minor units, rounded half up; 0 while its receipt is not in the books. */
    public long value(long quantity) {
        return bought == 0 ? 0 : new PieceCost(costMinor, bought).ofFirst(Math.min(quantity, bought));
    }

    /**
     * Names a line: one reel or batch at one place.
     *
     * @param holding {@code reel} or {@code batch}
     */
    public record Key(String holding, String id, Place place) {
        @Override
        public String toString() {
            return holding + " " + id + " at " + place;
        }
    }
}

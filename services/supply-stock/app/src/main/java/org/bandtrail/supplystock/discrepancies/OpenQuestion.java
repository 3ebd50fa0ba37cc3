package org.bandtrail.supplystock.discrepancies;

import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.costs.PieceCost;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * A finding with what the books know of its reel or batch.
 *
 * @param bought quantity of the receipt, millimetres or pieces, 0 while it is not in the books
 * @param costMinor cost of the receipt in minor units
 * @param currency ISO 4217, null while its receipt is not in the books
 * @param lastHolder who had it last, or null
 */
record OpenQuestion(
        Finding finding,
        long bought,
        long costMinor,
        @Nullable String currency,
        @Nullable String lastHolder) {
    boolean reel() {
        return finding.material().equals("reel");
    }

    Place place() {
        return Place.parse(finding.place());
    }

    /** What the amount cost, by the cost of the whole receipt, rounded half up; null if nobody knows. */
    @Nullable
    Money worth() {
        return currency == null || bought == 0
                ? null
                : Money.of(
                        new PieceCost(costMinor, bought).ofFirst(Math.min(bought, Math.abs(finding.quantity()))),
                        currency);
    }

    /** Orders the list, the oldest first, and is the cursor of the next page. */
    String key() {
        return "%s %s %s %s".formatted(finding.since(), finding.material(), finding.id(), finding.place());
    }
}

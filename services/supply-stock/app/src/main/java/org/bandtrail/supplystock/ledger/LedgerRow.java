package org.bandtrail.supplystock.ledger;

import java.time.ZoneOffset;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;

/**
 * One line of the ledger. What leaves the source comes to the target, or an account pays it.
 *
 * @param step 0, 1, 2 ... within the event
 * @param of item and currency it counts under
 * @param what the trade's word for this line
 * @param source text of a place, or null
 * @param quantity millimetres or pieces that change place, 0 where only value does
 * @param out minor units that leave the source
 * @param in minor units that come to the target
 * @param account who pays the difference, or null
 * @param used millimetres or pieces the account used, negative if they came back
 * @param crew it counts for, or nothing
 */
record LedgerRow(
        Fact fact,
        int step,
        Known of,
        String what,
        boolean adjusts,
        @Nullable String source,
        @Nullable String target,
        long quantity,
        long out,
        long in,
        @Nullable String account,
        long used,
        String tree,
        String person,
        String crew,
        String period) {

    LedgerRow {
        if (account == null && out != in) {
            throw new IllegalStateException("Line %d of event %d loses value between %s and %s: [%d] and [%d]."
                    .formatted(step, fact.position(), source, target, out, in));
        }
    }

    /** The same, counting for another crew. */
    LedgerRow countingFor(String other) {
        return new LedgerRow(
                fact, step, of, what, adjusts, source, target, quantity, out, in, account, used, tree, person, other,
                period);
    }

    /** What the account paid in minor units. */
    long paid() {
        return out - in;
    }

    /** The site of the account, or nothing. */
    String site() {
        return account != null && account.startsWith("site:") ? account.substring("site:".length()) : "";
    }

    String happenedAt() {
        return fact.entry().occurred().happened().toString();
    }

    String recordedAt() {
        return fact.entry().occurred().recorded().toString();
    }

    String happenedDay() {
        return fact.entry()
                .occurred()
                .happened()
                .atOffset(ZoneOffset.UTC)
                .toLocalDate()
                .toString();
    }

    String recordedDay() {
        return fact.entry()
                .occurred()
                .recorded()
                .atOffset(ZoneOffset.UTC)
                .toLocalDate()
                .toString();
    }

    /**
     * The place as sums know it: trees, bags and what is gone count by kind, or sums would be as long as the ledger.
     */
    static String slot(String place) {
        if (!place.startsWith("not-received:")) {
            PlaceKind kind = Place.parse(place).kind();
            if (kind == PlaceKind.TREE
                    || kind == PlaceKind.BAG
                    || kind == PlaceKind.DISPOSED
                    || kind == PlaceKind.SLIT) {
                return kind.word() + ":";
            }
        }
        return place;
    }
}

package org.bandtrail.supplystock.ledger;

import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Line.Bought;
import org.jspecify.annotations.Nullable;

/**
 * An event of a reel or batch as the ledger takes it.
 *
 * @param position place in the order of the store
 * @param holding which reel or batch
 * @param what the trade's word for it
 * @param adjusts whether it puts books right instead of moving something
 * @param note reason, fact or kit, or null
 * @param entry moves and charges
 * @param bought what the receipt says, null for every other event
 * @param cost what else it does to the cost
 * @param costDelta minor units that the cost of the holding grew by: below zero for what was sent back, the amount
 *      written
 *     down for a write-down
 */
record Fact(
        long position,
        Key holding,
        String what,
        boolean adjusts,
        @Nullable String note,
        Entry entry,
        @Nullable Bought bought,
        Cost cost,
        long costDelta) {

    /** A reel or a batch; both may bear the same label. */
    record Key(String kind, String id) {
        boolean isReel() {
            return kind.equals("reel");
        }
    }

    /** What an event does to the cost of its holding beside its charges. */
    enum Cost {
        /** Nothing. */
        STANDS,
        /** The supplier asks for more or less. */
        CHANGED,
        /** The wide reel it was slit from costs more or less. */
        CHANGED_FROM_WIDE_REEL,
        /** It goes back to the supplier with its cost. */
        SENT_BACK,
        /** Stock is worth less. */
        WRITTEN_DOWN
    }

    static Fact moved(long position, Key holding, String what, @Nullable String note, Entry entry) {
        return new Fact(position, holding, what, false, note, entry, null, Cost.STANDS, 0);
    }

    static Fact adjusting(long position, Key holding, String what, @Nullable String note, Entry entry) {
        return new Fact(position, holding, what, true, note, entry, null, Cost.STANDS, 0);
    }

    static Fact received(long position, Key holding, String what, @Nullable String note, Entry entry, Bought bought) {
        return new Fact(position, holding, what, false, note, entry, bought, Cost.STANDS, 0);
    }

    Fact costing(Cost how, long delta) {
        return new Fact(position, holding, what, how != Cost.SENT_BACK, note, entry, bought, how, delta);
    }
}

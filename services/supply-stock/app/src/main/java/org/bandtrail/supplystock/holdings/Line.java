package org.bandtrail.supplystock.holdings;

import java.time.Instant;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * An event of a reel or batch as the read models take it: which one, what happened, its entry, and, if it is the
 * receipt, what was bought.
 *
 * @param position place in the event store's order
 * @param holding identity of the reel or batch
 * @param what the trade's word for the event, for example {@code fitted}
 * @param note reason, fact or kit that explains the event, or null
 * @param bought what the receipt says, or null for every other event
 * @param revalued by how much the bought quantity and the cost changed after the receipt
 */
public record Line(
        long position,
        String holding,
        String what,
        @Nullable String note,
        Entry entry,
        @Nullable Bought bought,
        Revalued revalued) {

    /**
     * @param boughtDelta millimetres or pieces, below zero if they were sent back
     * @param costDelta minor units
     */
    public record Revalued(long boughtDelta, long costDelta) {
        /** Nothing changed. */
        public static final Revalued NOT = new Revalued(0, 0);
    }

    /** The same line of an event that changes what was bought or what it cost. */
    public Line revalued(long boughtDelta, long costDelta) {
        return new Line(position, holding, what, note, entry, bought, new Revalued(boughtDelta, costDelta));
    }

    /**
     * @param quantity millimetres or pieces
     * @param cost actual cost of the whole
     */
    public record Bought(MaterialCode material, MaterialKind kind, long quantity, Money cost) {}

    /** When it happened. */
    public Instant happened() {
        return entry.occurred().happened();
    }
}

package org.bandtrail.inspections.bags;

import java.time.Instant;
import java.util.List;
import org.bandtrail.inspections.bags.BagEvent.TakenAway;
import org.bandtrail.inspections.pieces.Places;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.BagId;

/**
 * One portion that went into the bag.
 *
 * @param portion what went in
 * @param happened when
 */
record Deposit(Portion portion, Instant happened) {

    /** Where it is: with the first load that left at or after it went in, else still in the bag. */
    String place(BagId bag, List<TakenAway> departures) {
        return departures.stream()
                .filter(gone -> !gone.occurred().happened().isBefore(happened))
                .findFirst()
                .map(gone -> Places.disposed(gone.load()))
                .orElse(Places.bag(bag));
    }
}

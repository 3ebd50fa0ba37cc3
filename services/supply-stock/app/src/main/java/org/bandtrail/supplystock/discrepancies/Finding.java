package org.bandtrail.supplystock.discrepancies;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A place where books and field disagree.
 *
 * @param what {@code missing}, {@code surplus} or {@code used more than the books knew}
 * @param material {@code reel} or {@code batch}
 * @param id identity of the reel or batch
 * @param place text form of the place
 * @param personId whom to ask: who is named by the place, or who had it last; null if nobody is known
 * @param quantity balance in the unit, negative if more was taken than the books knew
 * @param unit {@code mm} or {@code pieces}
 * @param since when the last move to or from this place happened
 * @param sentence the finding in words, without blame
 */
public record Finding(
        String what,
        String material,
        String id,
        String place,
        @Nullable String personId,
        long quantity,
        String unit,
        Instant since,
        String sentence) {}

package org.bandtrail.supplystock.discrepancies;

import java.time.LocalDate;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;

/** What happened to an open question that could not be settled. */
public sealed interface WaitingEvent {
    /** Which question. */
    String question();

    /** It waits until a day. */
    @StoredAs("discrepancy.waits")
    @Revision("1")
    record Waits(
            String question,
            String material,
            String id,
            Place place,
            long quantity,
            LocalDate until,
            String reason,
            PersonId by,
            Occurred occurred)
            implements WaitingEvent {}
}

package org.bandtrail.supplystock.discrepancies;

import java.time.LocalDate;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;

/** What people ask of an open question that cannot be settled yet. */
public sealed interface WaitingCommand {

    /**
     * Wish: let it wait. Refused without a reason, or if the day is not ahead or too far ahead.
     *
     * @param question which reel or batch at which place, see {@link Waiting#question}
     * @param material {@code reel} or {@code batch}
     * @param quantity the balance now; a change of it ends the waiting
     * @param until the question comes back on this day
     */
    record Wait(
            @TargetAggregateIdentifier String question,
            String material,
            String id,
            Place place,
            long quantity,
            LocalDate until,
            String reason,
            PersonId by,
            Occurred occurred)
            implements WaitingCommand {}
}

package org.bandtrail.supplystock.bins;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a bin. */
public sealed interface BinCommand {

    /**
     * Wish: mark a bin. Refused if the depot has one of that mark.
     *
     * @param words what it is for, may be empty
     */
    record Mark(@TargetAggregateIdentifier BinId binId, String words, PersonId by, Occurred occurred)
            implements BinCommand {}
}

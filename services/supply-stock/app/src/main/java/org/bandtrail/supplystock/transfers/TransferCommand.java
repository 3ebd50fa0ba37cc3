package org.bandtrail.supplystock.transfers;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;

/** What people ask of a transfer, in the order of its life. */
public sealed interface TransferCommand {

    /** Wish: send. Refused if it was sent before, is empty or goes nowhere. */
    record Send(
            @TargetAggregateIdentifier TransferId transferId,
            Place from,
            Place to,
            PersonId carrier,
            List<TransferLine> lines,
            PersonId by,
            Occurred occurred)
            implements TransferCommand {}

    /** Confirms what arrived, as measured and counted. Refused if it is not on its way; then it has arrived before. */
    record Arrive(
            @TargetAggregateIdentifier TransferId transferId, List<TransferLine> lines, PersonId by, Occurred occurred)
            implements TransferCommand {}

    /** Wish: call off, everything is still where it started. Refused once it has arrived. */
    record CallOff(@TargetAggregateIdentifier TransferId transferId, String reason, PersonId by, Occurred occurred)
            implements TransferCommand {}
}

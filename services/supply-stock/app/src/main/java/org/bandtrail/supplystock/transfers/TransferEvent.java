package org.bandtrail.supplystock.transfers;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;

/** What happened to a transfer. */
public sealed interface TransferEvent {
    /** The transfer it happened to. */
    TransferId transferId();

    /** Left with its carrier. */
    @StoredAs("transfer.sent")
    @Revision("1")
    record Sent(
            TransferId transferId,
            Place from,
            Place to,
            PersonId carrier,
            List<TransferLine> lines,
            PersonId by,
            Occurred occurred)
            implements TransferEvent {}

    /** Arrived, as measured and counted at the other end. */
    @StoredAs("transfer.arrived")
    @Revision("1")
    record Arrived(TransferId transferId, List<TransferLine> lines, PersonId by, Occurred occurred)
            implements TransferEvent {}

    /** Called off; everything went back to where it started. */
    @StoredAs("transfer.called-off")
    @Revision("1")
    record CalledOff(TransferId transferId, String reason, PersonId by, Occurred occurred) implements TransferEvent {}
}

package org.bandtrail.inspections.bags;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.Occurred;

/** What can be told of a bag. */
public sealed interface BagCommand {
    /** The bag; it need not be known. */
    BagId bag();

    /**
     * A band told that pieces went into the bag, or that they had been booked into it by mistake.
     *
     * @param moves moves with this bag as target or source
     */
    record NoteContents(@TargetAggregateIdentifier BagId bag, List<Move> moves, Doer doer, Occurred occurred)
            implements BagCommand {}

    /**
     * The bag left with a load.
     *
     * @param carrier code of who took it, never a person's name
     */
    record TakeAway(@TargetAggregateIdentifier BagId bag, LoadId load, String carrier, Doer doer, Occurred occurred)
            implements BagCommand {}
}

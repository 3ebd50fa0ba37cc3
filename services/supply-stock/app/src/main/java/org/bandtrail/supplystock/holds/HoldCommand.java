package org.bandtrail.supplystock.holds;

import java.time.Instant;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a hold. */
public sealed interface HoldCommand {

    /**
     * Wish: keep it for a kit. Refused if another kit has it, or if the depot does not have so much.
     *
     * @param quantity millimetres of a reel, pieces of a batch
     * @param there what the depot had of it when the wish was made
     * @param until when the hold lapses by itself
     */
    record Place(
            @TargetAggregateIdentifier HeldId held,
            KitId kit,
            DepotId depot,
            long quantity,
            long there,
            Instant until,
            PersonId by,
            Occurred occurred)
            implements HoldCommand {}

    /** Wish: keep it no longer. Nothing happens if the kit does not have it. */
    record Release(@TargetAggregateIdentifier HeldId held, KitId kit, PersonId by, Occurred occurred)
            implements HoldCommand {}

    /**
     * Wish: take it out of the depot for a kit. Refused if another kit has it reserved. Ends the kit's own hold.
     *
     * @param quantity pieces of a batch; of a reel always all
     * @param there what the depot had of it when the wish was made
     */
    record TakeOut(
            @TargetAggregateIdentifier HeldId held,
            KitId kit,
            long quantity,
            long there,
            PersonId by,
            Occurred occurred)
            implements HoldCommand {}
}

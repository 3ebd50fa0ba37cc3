package org.bandtrail.supplystock.batches;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/** What people and services ask of a batch, in the order of its life. Each says who asks and when. */
public sealed interface BatchCommand {

    /** Wish: take a delivered batch into a depot at its actual cost. Refused if this batch was received before. */
    record Receive(
            @TargetAggregateIdentifier BatchId batchId,
            MaterialCode material,
            MaterialKind kind,
            Pieces pieces,
            Money cost,
            DepotId depot,
            PersonId by,
            Occurred occurred)
            implements BatchCommand {}

    /** Wish: hand some pieces to a person. Refused if the depot does not have so many of this batch. */
    record HandOut(
            @TargetAggregateIdentifier BatchId batchId,
            KitId kit,
            DepotId depot,
            PersonId person,
            Pieces pieces,
            PersonId by,
            Occurred occurred)
            implements BatchCommand {}

    /**
     * Fact of the field: pieces changed place. Source and target say which fact it is: crew to tree (fitted), tree to
     * bag (taken down), tree to crew (put back into use), crew to bag (scrapped), bag to disposed.
     *
     * @param fact identity of the event that told it
     * @param site who pays if the pieces leave stock, or null if no site is named
     */
    record RecordFact(
            @TargetAggregateIdentifier BatchId batchId,
            String fact,
            Place source,
            Place target,
            Pieces pieces,
            @Nullable SiteId site,
            PersonId by,
            Occurred occurred)
            implements BatchCommand {}

    /** Fact: a person brought pieces back and they were counted. */
    record Return(
            @TargetAggregateIdentifier BatchId batchId,
            PersonId person,
            DepotId depot,
            Pieces counted,
            PersonId by,
            Occurred occurred)
            implements BatchCommand {}

    /** Wish: settle a place whose balance does not add up. Refused if books and field agree there. */
    record Settle(
            @TargetAggregateIdentifier BatchId batchId, Place place, String reason, PersonId by, Occurred occurred)
            implements BatchCommand {}
}

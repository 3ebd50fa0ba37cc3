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
import org.bandtrail.supplystock.holdings.Aside;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.jspecify.annotations.Nullable;

/** What people and services ask of a batch, in the order of its life. Each says who asks and when. */
public sealed interface BatchCommand {

    /**
     * Wish: take a delivered batch in at its actual cost. Refused if this batch was received before.
     *
     * @param into a depot, one of its bins, or set aside until it is accepted
     */
    record Receive(
            @TargetAggregateIdentifier BatchId batchId,
            MaterialCode material,
            MaterialKind kind,
            Pieces pieces,
            Money cost,
            Place into,
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

    /** What depots and the books do with it, beside the work of the field. */
    sealed interface OnShelf extends BatchCommand {}

    /**
     * Wish: move it between places of stock. Refused if the source does not have so much.
     *
     * @param pieces how much, or null for all that is there
     * @param reference what explains it, such as a transfer, or null
     * @param reason in words, or null
     */
    record Relocate(
            @TargetAggregateIdentifier BatchId batchId,
            StockMove what,
            Place source,
            Place target,
            @Nullable Pieces pieces,
            @Nullable String reference,
            @Nullable String reason,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Order of a recall: as far as the depot has it, it goes aside or is released. Nothing there, nothing happens. */
    record AsFarAsThere(@TargetAggregateIdentifier BatchId batchId, Aside order, PersonId by, Occurred occurred)
            implements OnShelf {}

    /** Fact: a transfer or vehicle arrived and this was counted. What is short is missing with the carrier. */
    record Arrive(
            @TargetAggregateIdentifier BatchId batchId,
            Place source,
            Place target,
            Pieces counted,
            PersonId carrier,
            String reference,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Wish: correct a place after an approved count, by counted less expected in pieces. Needs a reason. */
    record Adjust(
            @TargetAggregateIdentifier BatchId batchId,
            Place place,
            long difference,
            String reference,
            String reason,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Wish: change the cost after the receipt. Refused if stock would cost less than nothing. */
    record ChangeCost(
            @TargetAggregateIdentifier BatchId batchId,
            CostChange why,
            Money delta,
            String reference,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Wish: write its stock down to what it is still worth. Refused beyond what it costs. */
    record WriteDown(
            @TargetAggregateIdentifier BatchId batchId, Money amount, String reason, PersonId by, Occurred occurred)
            implements OnShelf {}

    /**
     * Wish: put right what was told wrong, by a further move. Refused if no disagreement gets smaller.
     *
     * @param other the batch that was meant or named by mistake, whose half of the correction is in the same work; or null
     * @param site who pays if it leaves stock, or is paid back; or null
     */
    record PutRight(
            @TargetAggregateIdentifier BatchId batchId,
            Place source,
            Place target,
            Pieces pieces,
            @Nullable BatchId other,
            @Nullable SiteId site,
            String reason,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}
}

package org.bandtrail.supplystock.reels;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.holdings.Aside;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.jspecify.annotations.Nullable;

/** What people and services ask of a reel, in the order of its life. Each says who asks and when. */
public sealed interface ReelCommand {

    /**
     * Wish: take a delivered reel in at its actual cost. Refused if this reel was received before.
     *
     * @param into a depot, one of its bins, or set aside until it is accepted
     */
    record Receive(
            @TargetAggregateIdentifier ReelId reelId,
            MaterialCode material,
            MaterialKind kind,
            Length length,
            Money cost,
            Place into,
            PersonId by,
            Occurred occurred)
            implements ReelCommand {}

    /** Wish: hand the whole reel, as far as it is in the depot, to a person. Refused if the depot does not have it. */
    record HandOut(
            @TargetAggregateIdentifier ReelId reelId,
            KitId kit,
            DepotId depot,
            PersonId person,
            PersonId by,
            Occurred occurred)
            implements ReelCommand {}

    /**
     * Fact of the field: a length changed place. Source and target say which fact it is: crew to tree (fitted), tree to
     * bag (taken down), tree to crew (put back into use), crew to bag (scrapped), bag to disposed.
     *
     * @param fact identity of the event that told it
     * @param site who pays if the length leaves stock, or null if no site is named
     */
    record RecordFact(
            @TargetAggregateIdentifier ReelId reelId,
            String fact,
            Place source,
            Place target,
            Length length,
            @Nullable SiteId site,
            PersonId by,
            Occurred occurred)
            implements ReelCommand {}

    /** Fact: a person brought the reel back and this length was measured on it. */
    record Return(
            @TargetAggregateIdentifier ReelId reelId,
            PersonId person,
            DepotId depot,
            Length measured,
            PersonId by,
            Occurred occurred)
            implements ReelCommand {}

    /** Wish: settle a place whose balance does not add up. Refused if books and field agree there. */
    record Settle(@TargetAggregateIdentifier ReelId reelId, Place place, String reason, PersonId by, Occurred occurred)
            implements ReelCommand {}

    /** What depots and the books do with it, beside the work of the field. */
    sealed interface OnShelf extends ReelCommand {}

    /**
     * Wish: move it between places of stock. Refused if the source does not have so much.
     *
     * @param length how much, or null for all that is there
     * @param reference what explains it, such as a transfer, or null
     * @param reason in words, or null
     */
    record Relocate(
            @TargetAggregateIdentifier ReelId reelId,
            StockMove what,
            Place source,
            Place target,
            @Nullable Length length,
            @Nullable String reference,
            @Nullable String reason,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Order of a recall: as far as the depot has it, it goes aside or is released. Nothing there, nothing happens. */
    record AsFarAsThere(@TargetAggregateIdentifier ReelId reelId, Aside order, PersonId by, Occurred occurred)
            implements OnShelf {}

    /** Fact: a transfer or vehicle arrived and this was measured. What is short is missing with the carrier. */
    record Arrive(
            @TargetAggregateIdentifier ReelId reelId,
            Place source,
            Place target,
            Length measured,
            PersonId carrier,
            String reference,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Wish: correct a place after an approved count, by counted less expected in millimetres. Needs a reason. */
    record Adjust(
            @TargetAggregateIdentifier ReelId reelId,
            Place place,
            long difference,
            String reference,
            String reason,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Wish: change the cost after the receipt. Refused if stock would cost less than nothing. */
    record ChangeCost(
            @TargetAggregateIdentifier ReelId reelId,
            CostChange why,
            Money delta,
            String reference,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Wish: write its stock down to what it is still worth. Refused beyond what it costs. */
    record WriteDown(
            @TargetAggregateIdentifier ReelId reelId, Money amount, String reason, PersonId by, Occurred occurred)
            implements OnShelf {}

    /** Wish: cut a length of this wide reel into narrower ones. Refused if the place does not have it. */
    record Slit(
            @TargetAggregateIdentifier ReelId reelId,
            String slitting,
            Place source,
            Length length,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /** Wish: take in a strip that was slit from a wide reel, at its share of the cost. Refused if received before. */
    record MakeBySlitting(
            @TargetAggregateIdentifier ReelId reelId,
            MaterialCode material,
            MaterialKind kind,
            Length length,
            Money cost,
            String slitting,
            Place into,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}

    /**
     * Wish: put right what was told wrong, by a further move. Refused if no disagreement gets smaller.
     *
     * @param other the reel that was meant or named by mistake, whose half of the correction is in the same work; or null
     * @param site who pays if it leaves stock, or is paid back; or null
     */
    record PutRight(
            @TargetAggregateIdentifier ReelId reelId,
            Place source,
            Place target,
            Length length,
            @Nullable ReelId other,
            @Nullable SiteId site,
            String reason,
            PersonId by,
            Occurred occurred)
            implements OnShelf {}
}

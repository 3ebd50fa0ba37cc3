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
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/** What people and services ask of a reel, in the order of its life. Each says who asks and when. */
public sealed interface ReelCommand {

    /** Wish: take a delivered reel into a depot at its actual cost. Refused if this reel was received before. */
    record Receive(
            @TargetAggregateIdentifier ReelId reelId,
            MaterialCode material,
            MaterialKind kind,
            Length length,
            Money cost,
            DepotId depot,
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
}

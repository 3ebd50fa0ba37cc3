package org.bandtrail.supplystock.items;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of an item. */
public sealed interface ItemCommand {

    /** Wish: register an item. Refused if the code is taken or the measures do not fit the kind. */
    record Register(
            @TargetAggregateIdentifier MaterialCode material,
            ItemDescription description,
            PersonId by,
            Occurred occurred)
            implements ItemCommand {}

    /** Wish: correct what is said about the item. Refused if it is unknown, the kind changes or no reason is given. */
    record Correct(
            @TargetAggregateIdentifier MaterialCode material,
            ItemDescription description,
            String reason,
            PersonId by,
            Occurred occurred)
            implements ItemCommand {}

    /** Wish: say how the item is supplied. Refused if it is not registered or a figure is out of range. */
    record SetSupply(
            @TargetAggregateIdentifier MaterialCode material,
            Supply supply,
            String reason,
            PersonId by,
            Occurred occurred)
            implements ItemCommand {}
}

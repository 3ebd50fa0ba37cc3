package org.bandtrail.supplystock.depots;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a depot. */
public sealed interface DepotCommand {

    /** Wish: open a depot. Refused if the identity is taken or the name empty. */
    record Open(@TargetAggregateIdentifier DepotId depotId, String name, PersonId by, Occurred occurred)
            implements DepotCommand {}
}

package org.bandtrail.supplystock.depots;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a depot. */
public sealed interface DepotEvent {
    /** The depot it happened to. */
    DepotId depotId();

    /** Opened under a name. */
    @StoredAs("depot.opened")
    @Revision("1")
    record Opened(DepotId depotId, String name, PersonId by, Occurred occurred) implements DepotEvent {}
}

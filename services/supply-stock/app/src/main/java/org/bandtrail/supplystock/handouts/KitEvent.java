package org.bandtrail.supplystock.handouts;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a kit. */
public sealed interface KitEvent {
    /** The kit it happened to. */
    KitId kitId();

    /** Handed out to a person of a crew. */
    @StoredAs("kit.handed-out")
    @Revision("1")
    record HandedOut(
            KitId kitId,
            DepotId depot,
            CrewId crew,
            PersonId person,
            List<KitLine> lines,
            PersonId by,
            Occurred occurred)
            implements KitEvent {}
}

package org.bandtrail.supplystock.handouts;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a kit. */
public sealed interface KitCommand {

    /** Wish: hand the kit out. Refused if the kit was handed out before or nothing is in it. */
    record HandOut(
            @TargetAggregateIdentifier KitId kitId,
            DepotId depot,
            CrewId crew,
            PersonId person,
            List<KitLine> lines,
            PersonId by,
            Occurred occurred)
            implements KitCommand {}
}

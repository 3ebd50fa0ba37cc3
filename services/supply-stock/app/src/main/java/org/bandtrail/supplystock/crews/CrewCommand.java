package org.bandtrail.supplystock.crews;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a crew. */
public sealed interface CrewCommand {

    /** Wish: form a crew. Refused if the identity is taken or nobody is in it. */
    record Form(
            @TargetAggregateIdentifier CrewId crewId,
            String name,
            DepotId depot,
            List<PersonId> people,
            PersonId by,
            Occurred occurred)
            implements CrewCommand {}

    /** Wish: say who is in the crew from now on. Refused if the crew is unknown or nobody would be left. */
    record ChangePeople(@TargetAggregateIdentifier CrewId crewId, List<PersonId> people, PersonId by, Occurred occurred)
            implements CrewCommand {}
}

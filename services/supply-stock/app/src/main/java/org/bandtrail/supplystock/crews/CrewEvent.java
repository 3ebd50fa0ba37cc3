package org.bandtrail.supplystock.crews;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a crew. */
public sealed interface CrewEvent {
    /** The crew it happened to. */
    CrewId crewId();

    /** Formed at a depot. */
    @StoredAs("crew.formed")
    @Revision("1")
    record Formed(CrewId crewId, String name, DepotId depot, List<PersonId> people, PersonId by, Occurred occurred)
            implements CrewEvent {}

    /** Other people are in it from now on. */
    @StoredAs("crew.people-changed")
    @Revision("1")
    record PeopleChanged(CrewId crewId, List<PersonId> people, PersonId by, Occurred occurred) implements CrewEvent {}
}

package org.bandtrail.supplystock.handouts;

import java.time.Instant;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holds.HeldId;
import org.bandtrail.supplystock.kitlists.KitRule;
import org.bandtrail.supplystock.kitlists.Pick;
import org.bandtrail.supplystock.kitlists.TreeNeed;
import org.jspecify.annotations.Nullable;

/** What happened to a kit. */
public sealed interface KitEvent {
    /** The kit it happened to. */
    KitId kitId();

    /** Reserved for a list of trees. */
    @StoredAs("kit.reserved")
    @Revision("1")
    record Reserved(
            KitId kitId,
            DepotId depot,
            CrewId crew,
            PersonId person,
            List<TreeNeed> trees,
            KitRule rule,
            List<Pick> picks,
            Instant until,
            PersonId by,
            Occurred occurred)
            implements KitEvent {}

    /** Given free again before it went out. */
    @StoredAs("kit.released")
    @Revision("1")
    record Released(
            KitId kitId, List<HeldId> held, @Nullable String reason, PersonId by, Occurred occurred)
            implements KitEvent {}

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

    /** Signed for by the person who has it, with their own sign-in and at their own time. */
    @StoredAs("kit.signed")
    @Revision("1")
    record Signed(KitId kitId, PersonId person, Occurred occurred) implements KitEvent {}
}

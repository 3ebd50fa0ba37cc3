package org.bandtrail.supplystock.handouts;

import java.time.Instant;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.kitlists.KitRule;
import org.bandtrail.supplystock.kitlists.Pick;
import org.bandtrail.supplystock.kitlists.TreeNeed;
import org.jspecify.annotations.Nullable;

/** What people ask of a kit, in the order of its life. */
public sealed interface KitCommand {

    /**
     * Wish: reserve a kit for a list of trees. Refused if the number is taken or nothing is in it.
     *
     * @param trees in the order the crew walks, with what each takes
     * @param rule by which lengths followed from girths
     * @param picks what was chosen for it
     * @param until when the reservation lapses
     */
    record Reserve(
            @TargetAggregateIdentifier KitId kitId,
            DepotId depot,
            CrewId crew,
            PersonId person,
            List<TreeNeed> trees,
            KitRule rule,
            List<Pick> picks,
            Instant until,
            PersonId by,
            Occurred occurred)
            implements KitCommand {}

    /** Wish: give a reserved kit free again. Refused if it is not reserved. */
    record Release(
            @TargetAggregateIdentifier KitId kitId,
            @Nullable String reason,
            PersonId by,
            Occurred occurred) implements KitCommand {}

    /** Wish: hand the kit out. Refused if it was handed out or released before, or nothing is in it. */
    record HandOut(
            @TargetAggregateIdentifier KitId kitId,
            DepotId depot,
            CrewId crew,
            PersonId person,
            List<KitLine> lines,
            PersonId by,
            Occurred occurred)
            implements KitCommand {}

    /** Wish: sign for it. Refused unless the one who signs is the one who has it. Signing twice changes nothing. */
    record Sign(@TargetAggregateIdentifier KitId kitId, PersonId person, Occurred occurred) implements KitCommand {}
}

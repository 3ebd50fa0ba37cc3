package org.bandtrail.inspections.bands;

import java.time.Instant;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.pieces.Trunk;
import org.bandtrail.inspections.sightings.Look;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;

/** What can be asked of a band, in the order of its life. All but the first come from a crew. */
public sealed interface BandCommand {
    /** The band; it need not be known. */
    BandId band();

    /**
     * Heard from site-installs: the band hangs.
     *
     * @param fitting names the fact for ever
     */
    record HearOfFitting(
            @TargetAggregateIdentifier BandId band,
            String fitting,
            Trunk trunk,
            Doer doer,
            List<Portion> putUp,
            Occurred occurred)
            implements BandCommand {}

    /**
     * A crew looked, and perhaps renewed pieces.
     *
     * @param visit names the visit for ever
     * @param replacement null if nothing was renewed
     */
    record RecordVisit(
            @TargetAggregateIdentifier BandId band,
            String visit,
            Look look,
            @Nullable Replacement replacement,
            Judging judging,
            Doer doer,
            Occurred occurred)
            implements BandCommand {}

    /**
     * A crew took the band down.
     *
     * @param teardown names the teardown for ever
     */
    record RecordTeardown(
            @TargetAggregateIdentifier BandId band,
            String teardown,
            Teardown how,
            Judging judging,
            Doer doer,
            Occurred occurred)
            implements BandCommand {}

    /**
     * Somebody tells what became of an animal found on a visit.
     *
     * @param visit the visit on which it was found, which may not be known yet
     * @param handedTo code or licence number of the rehabilitator, never a name; null if nobody took it
     */
    record RecordOutcome(
            @TargetAggregateIdentifier BandId band,
            String visit,
            String outcome,
            @Nullable String handedTo,
            @Nullable Instant handedAt,
            Doer doer,
            Occurred occurred)
            implements BandCommand {}
}

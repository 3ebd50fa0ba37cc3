package org.bandtrail.inspections.teardowns;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.BandCommand.RecordTeardown;
import org.bandtrail.inspections.bands.BandEvent;
import org.bandtrail.inspections.bands.BandFlag;
import org.bandtrail.inspections.bands.Bands;
import org.bandtrail.inspections.bands.Teardown;
import org.bandtrail.inspections.duebands.VisitPolicies;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.FactName;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Teardowns over HTTP. */
@RestController
@Tag(name = "teardowns", description = "Bands that came off their trees")
final class TeardownController {
    private final Work work;
    private final Bands bands;
    private final VisitPolicies policies;
    private final Clock clock;

    TeardownController(Work work, Bands bands, VisitPolicies policies, Clock clock) {
        this.work = work;
        this.bands = bands;
        this.policies = policies;
        this.clock = clock;
    }

    /** One teardown. */
    record TeardownRequest(
            UUID commandId,
            @Schema(example = "TD-0001") String teardownId,
            BandId bandId,
            @Schema(description = "Who took it down") PersonId personId,
            @Nullable CrewId crewId,

            @Schema(description = "The waste bag", example = "BAG-20") @Nullable
            BagId bagId,

            @Schema(description = "bag, or reuse if the mesh goes back to the person") @Nullable
            String mesh,

            @Schema(description = "bag, or reuse") @Nullable String fasteners,
            Instant happenedAt) {
        RecordTeardown command(PersonId by, Instant recorded, VisitPolicies.Judge judge) {
            return new RecordTeardown(
                    bandId,
                    FactName.checked("Teardown", teardownId),
                    new Teardown(onward(mesh), onward(fasteners), bagId),
                    judge.at(happenedAt),
                    new Doer(crewId, personId, by),
                    new Occurred(happenedAt, recorded));
        }

        private static Onward onward(@Nullable String text) {
            return text == null ? Onward.BAG : Onward.of(text);
        }
    }

    /** What a teardown is answered with. */
    record TeardownAnswer(String teardownId, List<String> flags) {}

    @PostMapping("/teardowns")
    @Operation(
            summary = "Record that a band was taken down",
            description =
                    "Always accepted. What hung on the tree goes to the bag, mesh and fasteners on request back to"
                            + " the person; for a band not known yet the moves follow when its fitting is heard.")
    TeardownAnswer takeDown(@RequestBody TeardownRequest request, ActingPerson acting) {
        return work.once(request.commandId(), request, TeardownAnswer.class, () -> {
            List<BandEvent> events = bands.tell(request.command(acting.id(), clock.instant(), policies.judge()));
            List<String> flags = events.stream()
                    .filter(BandEvent.TakenDown.class::isInstance)
                    .flatMap(event -> ((BandEvent.TakenDown) event).flags().stream())
                    .map(BandFlag::spelt)
                    .sorted()
                    .toList();
            return new TeardownAnswer(request.teardownId(), flags);
        });
    }
}

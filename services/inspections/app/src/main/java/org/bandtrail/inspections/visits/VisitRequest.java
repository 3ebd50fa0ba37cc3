package org.bandtrail.inspections.visits;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.bandtrail.inspections.bands.BandCommand.RecordVisit;
import org.bandtrail.inspections.bands.Judging;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.FactName;
import org.bandtrail.inspections.sightings.Answer;
import org.bandtrail.inspections.sightings.Bycatch;
import org.bandtrail.inspections.sightings.GuardState;
import org.bandtrail.inspections.sightings.LifeStage;
import org.bandtrail.inspections.sightings.Look;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/**
 * One visit as a device or a desk sends it. Identities are text here, so that in a sync one that is misspelt spoils one
 * record and not the day.
 */
public record VisitRequest(
        @Schema(description = "Made by the client, UUIDv7; the same id does the work once")
        UUID commandId,

        @Schema(description = "Names the visit for ever", example = "V-0001")
        String visitId,

        @Schema(example = "B-0001") String bandId,

        @Schema(description = "Who looked", example = "P-07")
        String personId,

        @Schema(example = "C-1") @Nullable String crewId,

        @Schema(description = "read, not-found, not-read or band-missing", example = "read")
        String answer,

        @Schema(description = "How much of the surface was covered, 0 to 100") @Nullable
        Integer saturationPercent,

        @Schema(description = "Insects by life stage: egg-mass, instar-1 to instar-4, adult; none on a read band is 0")
        @Nullable
        Map<String, Long> catches,

        @Nullable BycatchRequest bycatch,

        @Schema(description = "sound, touching, gap or missing") @Nullable
        String guard,

        @Nullable ReplaceRequest replace,
        Instant happenedAt) {

    /** Another animal on the band, or the express answer that there was none. */
    public record BycatchRequest(
            boolean seen,
            @Nullable Instant foundAt,
            @Nullable String animal,
            @Nullable Boolean alive,
            @Nullable String action,

            @Schema(description = "Code or licence of the rehabilitator, never a name") @Nullable
            String handedTo,

            @Nullable Instant handedAt,
            @Nullable String outcome,
            @Nullable String photo,
            @Nullable Boolean supervisorTold) {
        Bycatch bycatch(Instant visited) {
            return new Bycatch(
                    seen,
                    foundAt == null && seen ? visited : foundAt,
                    animal,
                    alive,
                    action,
                    handedTo,
                    handedAt,
                    outcome,
                    photo,
                    Boolean.TRUE.equals(supervisorTold));
        }
    }

    /**
     * The command for the band.
     *
     * @throws IllegalArgumentException naming the value that cannot be read
     */
    RecordVisit command(PersonId by, Instant recorded, Judging judging) {
        Map<LifeStage, Long> byStage = new TreeMap<>();
        if (catches != null) {
            catches.forEach((stage, count) -> byStage.put(LifeStage.of(stage), counted(stage, count)));
        }
        Look look = new Look(
                Answer.of(answer),
                saturationPercent,
                byStage,
                guard == null ? null : GuardState.of(guard),
                bycatch == null ? null : bycatch.bycatch(happenedAt));
        return new RecordVisit(
                new BandId(bandId),
                FactName.checked("Visit", visitId),
                look,
                replace == null ? null : replace.replacement(),
                judging,
                new Doer(crewId == null ? null : new CrewId(crewId), new PersonId(personId), by),
                new Occurred(happenedAt, recorded));
    }

    private static long counted(String stage, @Nullable Long count) {
        if (count == null) {
            throw new IllegalArgumentException("Catch of %s has no number. Leave it out or write 0.".formatted(stage));
        }
        return count;
    }
}

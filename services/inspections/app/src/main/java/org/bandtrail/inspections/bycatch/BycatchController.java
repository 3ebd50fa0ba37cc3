package org.bandtrail.inspections.bycatch;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.bands.BandCommand.RecordOutcome;
import org.bandtrail.inspections.bands.Bands;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.FactName;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Bycatch over HTTP. */
@RestController
@Tag(name = "bycatch", description = "Animals found on bands, what became of them, and what to do")
final class BycatchController {
    private final BycatchList list;
    private final Bands bands;
    private final Work work;
    private final Clock clock;

    BycatchController(BycatchList list, Bands bands, Work work, Clock clock) {
        this.list = list;
        this.bands = bands;
        this.work = work;
        this.clock = clock;
    }

    /** A page of animals, with what to do when one is stuck. */
    record Rows(List<BycatchList.BycatchRow> rows, @Nullable String next, List<String> cautions) {}

    /** What became of an animal; the band is named by a device whose visit may not have arrived yet. */
    record OutcomeRequest(
            UUID commandId,
            @Nullable BandId bandId,
            @Schema(example = "released after two days") String outcome,

            @Schema(description = "Code or licence of the rehabilitator, never a name") @Nullable
            String handedTo,

            @Nullable Instant handedAt,
            Instant happenedAt) {}

    /** What an outcome is answered with. */
    record OutcomeAnswer(String visitId, BandId bandId) {}

    @GetMapping("/bycatch")
    @Operation(
            summary = "Animals found on bands, newest first",
            description = "With the cautions for a stuck animal. Local law and the licensed rehabilitator come first.")
    Rows list(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable Boolean open,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1_000);
        List<BycatchList.BycatchRow> rows = list.page(site, open, after, size);
        String next = rows.size() < size
                ? null
                : rows.getLast().happenedAt() + "~" + rows.getLast().visitId();
        return new Rows(rows, next, Cautions.STUCK_ANIMAL);
    }

    @PostMapping("/bycatch/{visitId}/outcome")
    @Operation(
            summary = "Tell what became of an animal",
            description = "Closes the entry. Name the band if the visit may not have arrived yet.")
    OutcomeAnswer outcome(@PathVariable String visitId, @RequestBody OutcomeRequest request, ActingPerson acting) {
        String visit = FactName.checked("Visit", visitId);
        BandId band = request.bandId() != null
                ? request.bandId()
                : new BandId(list.bandOf(visit).orElseThrow(() -> new NoSuch("bycatch of visit", visit)));
        return work.once(request.commandId(), request, OutcomeAnswer.class, () -> {
            bands.tell(new RecordOutcome(
                    band,
                    visit,
                    request.outcome(),
                    request.handedTo(),
                    request.handedAt(),
                    new Doer(null, acting.id(), acting.id()),
                    new Occurred(request.happenedAt(), clock.instant())));
            return new OutcomeAnswer(visit, band);
        });
    }
}

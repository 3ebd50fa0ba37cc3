package org.bandtrail.supplystock.slittings;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Slittings over HTTP. */
@RestController
@Tag(name = "slittings", description = "Wide reels cut into narrow ones; length, area and cost balance")
final class SlittingController {
    private final Work work;
    private final Slitter slitter;
    private final Slittings slittings;
    private final Clock clock;

    SlittingController(Work work, Slitter slitter, Slittings slittings, Clock clock) {
        this.work = work;
        this.slitter = slitter;
        this.slittings = slittings;
        this.clock = clock;
    }

    @PostMapping("/slittings")
    @Operation(
            summary = "Slit a wide reel",
            description = "Without a length all that the depot has of it. Blades: cut-proof gloves and eye protection.")
    Done slit(@RequestBody Slit request, ActingPerson by) {
        return work.once(request.commandId(), request, Done.class, () -> {
            Occurred occurred = new Occurred(
                    request.happenedAt() == null ? clock.instant() : request.happenedAt(), clock.instant());
            return new Done(request.slittingId(), slitter.slit(request, by.id(), occurred));
        });
    }

    @GetMapping("/slittings")
    @Operation(summary = "Slittings, the newest first, a page at a time")
    Rows list(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<SlittingRow> rows = slittings.page(after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().slittingId());
    }

    @GetMapping("/slittings/{slittingId}")
    @Operation(summary = "One slitting with its strips, areas and costs")
    SlittingRow one(@PathVariable SlittingId slittingId) {
        return slittings.one(slittingId.value()).orElseThrow(() -> new NoSuch("slitting", slittingId));
    }

    @GetMapping("/slittings/labels")
    @Operation(summary = "Labels proposed for the strips of a reel")
    Labels labels(@RequestParam ReelId reel, @RequestParam int strips) {
        return new Labels(Slitter.labels(reel, Math.clamp(strips, 1, 60)));
    }

    record Slit(
            UUID commandId,
            SlittingId slittingId,
            ReelId reelId,
            DepotId depotId,
            @Nullable Length length,
            List<Wanted> strips,
            Length trim,
            @Nullable Instant happenedAt) {}

    record Wanted(ReelId reelId, MaterialCode materialCode) {}

    record Done(SlittingId slittingId, List<Money> costs) {}

    record Labels(List<ReelId> labels) {}

    record Rows(List<SlittingRow> rows, @Nullable String next) {}
}

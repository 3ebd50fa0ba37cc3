package org.bandtrail.supplystock.handouts;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.costs.OldestFirst;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Handouts and returns over HTTP. */
@RestController
@Tag(name = "handouts", description = "Kits handed out to a person, and what comes back")
final class KitController {
    private final Work work;
    private final Handouts handouts;
    private final Kits kits;
    private final Clock clock;

    KitController(Work work, Handouts handouts, Kits kits, Clock clock) {
        this.work = work;
        this.handouts = handouts;
        this.kits = kits;
        this.clock = clock;
    }

    @PostMapping("/handouts")
    @Operation(summary = "Hand out a kit: all lines or none; fasteners come from the oldest batches first")
    HandedOut handOut(@RequestBody HandOut request, ActingPerson by) {
        return work.once(request.commandId(), request, HandedOut.class, () -> {
            List<KitLine> lines = handouts.handOut(
                    new Handouts.KitWish(
                            request.kitId(),
                            request.depotId(),
                            request.crewId(),
                            request.personId(),
                            orNone(request.reels()),
                            orNone(request.batches()).stream()
                                    .map(line -> new OldestFirst.Pick(line.batchId(), line.pieces()))
                                    .toList(),
                            orNone(request.fasteners())),
                    by.id(),
                    new Occurred(request.happenedAt(), clock.instant()));
            return new HandedOut(request.kitId(), lines);
        });
    }

    @PostMapping("/returns")
    @Operation(summary = "Take back measured reels and counted pieces; the answer says what does not add up")
    Returned takeBack(@RequestBody TakeBack request, ActingPerson by) {
        return work.once(request.commandId(), request, Returned.class, () -> {
            Occurred occurred = new Occurred(request.happenedAt(), clock.instant());
            List<Handouts.ReturnedLine> lines = new ArrayList<>();
            for (MeasuredReel reel : orNone(request.reels())) {
                lines.add(handouts.takeBack(new ReelCommand.Return(
                        reel.reelId(), request.personId(), request.depotId(), reel.measured(), by.id(), occurred)));
            }
            for (CountedBatch batch : orNone(request.batches())) {
                lines.add(handouts.takeBack(new BatchCommand.Return(
                        batch.batchId(), request.personId(), request.depotId(), batch.counted(), by.id(), occurred)));
            }
            return new Returned(lines);
        });
    }

    @GetMapping("/handouts")
    @Operation(summary = "Kits, newest first, with what is still out of each")
    Rows list(
            @RequestParam(defaultValue = "false") boolean open,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<KitRow> rows = kits.page(open, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().kitId());
    }

    private static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }

    record HandOut(
            UUID commandId,
            KitId kitId,
            DepotId depotId,
            CrewId crewId,
            PersonId personId,
            @Nullable List<ReelId> reels,
            @Nullable List<BatchPieces> batches,
            @Nullable List<Handouts.KitWish.Fasteners> fasteners,
            Instant happenedAt) {}

    record BatchPieces(BatchId batchId, Pieces pieces) {}

    record HandedOut(KitId kitId, List<KitLine> lines) {}

    record TakeBack(
            UUID commandId,
            @Nullable KitId kitId,
            PersonId personId,
            DepotId depotId,
            @Nullable List<MeasuredReel> reels,
            @Nullable List<CountedBatch> batches,
            Instant happenedAt) {}

    record MeasuredReel(ReelId reelId, Length measured) {}

    record CountedBatch(BatchId batchId, Pieces counted) {}

    record Returned(List<Handouts.ReturnedLine> lines) {}

    record Rows(List<KitRow> rows, @Nullable String next) {}
}

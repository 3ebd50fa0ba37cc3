package org.bandtrail.supplystock.bins;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.relocations.Relocating;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Bins over HTTP. */
@RestController
@Tag(name = "bins", description = "Marked shelf places of the depots")
final class BinController {
    private final Work work;
    private final Commands commands;
    private final Relocating relocating;
    private final Bins bins;
    private final Clock clock;

    BinController(Work work, Commands commands, Relocating relocating, Bins bins, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.relocating = relocating;
        this.bins = bins;
        this.clock = clock;
    }

    @PostMapping("/bins")
    @Operation(summary = "Mark a bin")
    Marked mark(@RequestBody Mark request, ActingPerson by) {
        return work.once(request.commandId(), request, Marked.class, () -> {
            BinId bin = BinId.of(request.depotId(), request.mark());
            String words = request.words() == null ? "" : request.words();
            commands.send(new BinCommand.Mark(bin, words, by.id(), Occurred.at(clock.instant())));
            return new Marked(bin);
        });
    }

    @PostMapping("/bins/put")
    @Operation(summary = "Put a reel or pieces into a bin of the depot they are in; without a mark, out of the bins")
    Put put(@RequestBody PutInto request, ActingPerson by) {
        return work.once(request.commandId(), request, Put.class, () -> {
            Place target = target(request);
            Occurred occurred = new Occurred(
                    request.happenedAt() == null ? clock.instant() : request.happenedAt(), clock.instant());
            var why = new Relocating.Why(StockMove.PUT_IN_BIN, null, null);
            long moved = request.reelId() != null
                    ? relocating.reel(
                            request.reelId(),
                            relocating.whereIs(request.reelId(), request.depotId()),
                            target,
                            why,
                            by.id(),
                            occurred)
                    : relocating.batch(
                            required(request.batchId()),
                            relocating.whereIs(required(request.batchId()), request.depotId()),
                            target,
                            request.pieces(),
                            why,
                            by.id(),
                            occurred);
            return new Put(target, moved, occurred.recorded());
        });
    }

    private Place target(PutInto request) {
        if (request.mark() == null || request.mark().isBlank()) {
            return Place.depot(request.depotId());
        }
        BinId bin = BinId.of(request.depotId(), request.mark());
        if (!bins.isMarked(bin)) {
            throw new BinRefused.BinUnknown(bin);
        }
        return bin.place();
    }

    private static BatchId required(@Nullable BatchId batch) {
        if (batch == null) {
            throw new IllegalArgumentException("Neither a reel nor a batch is named. Scan a label.");
        }
        return batch;
    }

    @GetMapping("/bins")
    @Operation(summary = "Bins with how much is in each, a page at a time")
    Rows list(
            @RequestParam(required = false) @Nullable String depot,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "200") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<BinRow> rows = bins.page(depot, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().binId());
    }

    @GetMapping("/bins/{depotId}/{mark}")
    @Operation(summary = "One bin with what lies in it")
    BinRow.Whole one(@PathVariable DepotId depotId, @PathVariable String mark) {
        BinId bin = BinId.of(depotId, mark);
        return new BinRow.Whole(bin.value(), depotId.value(), bins.contents(bin));
    }

    record Mark(
            UUID commandId,
            DepotId depotId,
            String mark,
            @Nullable String words) {}

    record Marked(BinId binId) {}

    record PutInto(
            UUID commandId,
            DepotId depotId,
            @Nullable String mark,
            @Nullable ReelId reelId,
            @Nullable BatchId batchId,
            @Nullable Pieces pieces,
            @Nullable Instant happenedAt) {}

    /** @param at when the books learnt of it: by this the move can be taken back, see {@code takebacks} */
    record Put(Place place, long quantity, @Nullable Instant at) {}

    record Rows(List<BinRow> rows, @Nullable String next) {}
}

package org.bandtrail.supplystock.transfers;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Transfers over HTTP. */
@RestController
@Tag(name = "transfers", description = "Stock on its way between depots and vehicles, confirmed at both ends")
final class TransferController {
    private final Work work;
    private final Commands commands;
    private final Carriage carriage;
    private final Transfers transfers;
    private final Clock clock;

    TransferController(Work work, Commands commands, Carriage carriage, Transfers transfers, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.carriage = carriage;
        this.transfers = transfers;
        this.clock = clock;
    }

    @PostMapping("/transfers")
    @Operation(summary = "Send whole reels and pieces to another depot or vehicle: all lines or none")
    Done send(@RequestBody Send request, ActingPerson by) {
        return work.once(request.commandId(), request, Done.class, () -> {
            Occurred occurred = occurred(request.happenedAt());
            List<TransferLine> lines = carriage.send(request, by.id(), occurred);
            commands.send(new TransferCommand.Send(
                    request.transferId(), request.from(), request.to(), request.carrier(), lines, by.id(), occurred));
            return new Done(request.transferId(), lines);
        });
    }

    @PostMapping("/transfers/{transferId}/arrive")
    @Operation(summary = "Confirm what arrived, measured and counted; what is short is missing with the carrier")
    Done arrive(@PathVariable TransferId transferId, @RequestBody Arrive request, ActingPerson by) {
        TransferRow transfer = sent(transferId);
        return work.once(request.commandId(), List.of(transferId.value(), request), Done.class, () -> {
            Occurred occurred = occurred(request.happenedAt());
            Map<String, Long> found = new HashMap<>();
            orNone(request.reels())
                    .forEach(reel ->
                            found.put("reel " + reel.reelId(), reel.measured().mm()));
            orNone(request.batches())
                    .forEach(batch -> found.put(
                            "batch " + batch.batchId(), batch.counted().count()));
            List<TransferLine> lines = transfer.lines().stream()
                    .map(line -> new TransferLine(
                            line.holding(), line.id(), found.getOrDefault(line.holding() + " " + line.id(), 0L)))
                    .toList();
            commands.send(new TransferCommand.Arrive(transferId, lines, by.id(), occurred));
            return new Done(transferId, carriage.arrive(transfer, found, by.id(), occurred));
        });
    }

    @PostMapping("/transfers/{transferId}/call-off")
    @Operation(summary = "Call a transfer off that has not left after all, with a reason")
    Done callOff(@PathVariable TransferId transferId, @RequestBody CallOff request, ActingPerson by) {
        TransferRow transfer = sent(transferId);
        return work.once(request.commandId(), List.of(transferId.value(), request), Done.class, () -> {
            Occurred now = Occurred.at(clock.instant());
            commands.send(new TransferCommand.CallOff(transferId, request.reason(), by.id(), now));
            carriage.callOff(transfer, request.reason(), by.id(), now);
            return new Done(transferId, List.of());
        });
    }

    private TransferRow sent(TransferId transfer) {
        return transfers.one(transfer).orElseThrow(() -> new TransferRefused.TransferUnknown(transfer));
    }

    private Occurred occurred(@Nullable Instant happenedAt) {
        return new Occurred(happenedAt == null ? clock.instant() : happenedAt, clock.instant());
    }

    static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }

    @GetMapping("/transfers")
    @Operation(summary = "Transfers, the newest first, a page at a time")
    Rows list(
            @RequestParam(required = false) @Nullable String state,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<TransferRow> rows = transfers.page(state, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().transferId());
    }

    @GetMapping("/transfers/{transferId}")
    @Operation(summary = "One transfer, line by line: sent and arrived")
    TransferRow one(@PathVariable TransferId transferId) {
        return sent(transferId);
    }

    record Send(
            UUID commandId,
            TransferId transferId,
            Place from,
            Place to,
            PersonId carrier,
            @Nullable List<ReelId> reels,
            @Nullable List<SomePieces> batches,
            @Nullable Instant happenedAt) {}

    record SomePieces(BatchId batchId, @Nullable Pieces pieces) {}

    record Arrive(
            UUID commandId,
            @Nullable List<MeasuredReel> reels,
            @Nullable List<CountedBatch> batches,
            @Nullable Instant happenedAt) {}

    record MeasuredReel(ReelId reelId, Length measured) {}

    record CountedBatch(BatchId batchId, Pieces counted) {}

    record CallOff(UUID commandId, String reason) {}

    record Done(TransferId transferId, List<TransferLine> lines) {}

    record Rows(List<TransferRow> rows, @Nullable String next) {}
}

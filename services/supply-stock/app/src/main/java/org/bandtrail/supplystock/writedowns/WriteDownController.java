package org.bandtrail.supplystock.writedowns;

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
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Write-downs over HTTP. */
@RestController
@Tag(name = "write-downs", description = "Stock written down to what it is still worth")
final class WriteDownController {
    private final Work work;
    private final Commands commands;
    private final WriteDowns writeDowns;
    private final StockWorths worths;
    private final Clock clock;

    WriteDownController(Work work, Commands commands, WriteDowns writeDowns, StockWorths worths, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.writeDowns = writeDowns;
        this.worths = worths;
        this.clock = clock;
    }

    @PostMapping("/write-downs")
    @Operation(summary = "Write the stock of a reel or batch down by an amount, with a reason")
    Done writeDown(@RequestBody Wish request, ActingPerson by) {
        return work.once(request.commandId(), request, Done.class, () -> {
            Occurred occurred = new Occurred(request.happenedAt(), clock.instant());
            commands.send(
                    request.holding() == Holding.REEL
                            ? new ReelCommand.WriteDown(
                                    new ReelId(request.id()), request.amount(), request.reason(), by.id(), occurred)
                            : new BatchCommand.WriteDown(
                                    new BatchId(request.id()), request.amount(), request.reason(), by.id(), occurred));
            return new Done(request.id(), request.amount());
        });
    }

    @GetMapping("/write-downs")
    @Operation(summary = "Write-downs, newest first")
    Rows list(@RequestParam(required = false) @Nullable Long after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<WriteDowns.Row> rows = writeDowns.page(after, size);
        return new Rows(
                rows, rows.size() < size ? null : Long.toString(rows.getLast().position()));
    }

    @GetMapping("/write-downs/worth")
    @Operation(summary = "What is left of a reel or batch and what it stands at: the most that can be written down")
    StockWorths.Worth worth(@RequestParam Holding holding, @RequestParam String id) {
        return holding == Holding.REEL ? worths.ofReel(new ReelId(id)) : worths.ofBatch(new BatchId(id));
    }

    /** Which of the two the identity names. */
    enum Holding {
        REEL,
        BATCH
    }

    record Wish(UUID commandId, Holding holding, String id, Money amount, String reason, Instant happenedAt) {}

    record Done(String id, Money amount) {}

    record Rows(List<WriteDowns.Row> rows, @Nullable String next) {}
}

package org.bandtrail.supplystock.batches;

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
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.items.Items;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/**
 * Batches over HTTP: a request becomes a command, a refusal becomes a problem (RFC 9457), a question reads the
 * balances.
 */
@RestController
@Tag(name = "batches", description = "Deliveries of fasteners, each with its own identity and remaining pieces")
final class BatchController {
    private final Work work;
    private final Commands commands;
    private final Items items;
    private final BatchBalances balances;
    private final Clock clock;

    BatchController(Work work, Commands commands, Items items, BatchBalances balances, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.items = items;
        this.balances = balances;
        this.clock = clock;
    }

    @PostMapping("/batches")
    @Operation(summary = "Receive a batch into a depot at its actual cost")
    Received receive(@RequestBody Receive request, ActingPerson by) {
        return work.once(request.commandId(), request, Received.class, () -> {
            commands.send(new BatchCommand.Receive(
                    request.batchId(),
                    request.materialCode(),
                    items.kindOf(request.materialCode()),
                    request.pieces(),
                    request.cost(),
                    Place.depot(request.depotId()),
                    by.id(),
                    new Occurred(request.happenedAt(), clock.instant())));
            return new Received(request.batchId(), request.pieces().count());
        });
    }

    @GetMapping("/batches")
    @Operation(summary = "Balances of batches, a page at a time, by batch identity")
    Rows list(
            @RequestParam(required = false) @Nullable String material,
            @RequestParam(required = false) @Nullable String place,
            @RequestParam(required = false) @Nullable String q,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<BatchBalance> rows = balances.page(material, place, q, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().batchId());
    }

    @GetMapping("/batches/{batchId}")
    @Operation(summary = "One batch with every place and its whole history")
    BatchBalance.Whole one(@PathVariable BatchId batchId) {
        return balances.whole(batchId.value())
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "Batch [%s] is not in the books. Check the label.".formatted(batchId)));
    }

    record Receive(
            UUID commandId,
            BatchId batchId,
            MaterialCode materialCode,
            DepotId depotId,
            Pieces pieces,
            Money cost,
            Instant happenedAt) {}

    record Received(BatchId batchId, long pieces) {}

    record Rows(List<BatchBalance> rows, @Nullable String next) {}
}

package org.bandtrail.supplystock.reels;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
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
 * Reels over HTTP: a request becomes a command, a refusal becomes a problem (RFC 9457), a question reads the balances.
 */
@RestController
@Tag(name = "reels", description = "Physical rolls of tape and mesh, each with its own identity and remaining length")
final class ReelController {
    private final Work work;
    private final Commands commands;
    private final Items items;
    private final ReelBalances balances;
    private final Clock clock;

    ReelController(Work work, Commands commands, Items items, ReelBalances balances, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.items = items;
        this.balances = balances;
        this.clock = clock;
    }

    @PostMapping("/reels")
    @Operation(summary = "Receive a reel into a depot at its actual cost")
    Received receive(@RequestBody Receive request, ActingPerson by) {
        return work.once(request.commandId(), request, Received.class, () -> {
            commands.send(new ReelCommand.Receive(
                    request.reelId(),
                    request.materialCode(),
                    items.kindOf(request.materialCode()),
                    request.length(),
                    request.cost(),
                    Place.depot(request.depotId()),
                    by.id(),
                    new Occurred(request.happenedAt(), clock.instant())));
            return new Received(request.reelId(), request.length().mm());
        });
    }

    @GetMapping("/reels")
    @Operation(summary = "Balances of reels, a page at a time, by reel identity")
    Rows list(
            @RequestParam(required = false) @Nullable String material,
            @RequestParam(required = false) @Nullable String place,
            @RequestParam(required = false) @Nullable String q,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<ReelBalance> rows = balances.page(material, place, q, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().reelId());
    }

    @GetMapping("/reels/{reelId}")
    @Operation(summary = "One reel with every place and its whole history")
    ReelBalance.Whole one(@PathVariable ReelId reelId) {
        return balances.whole(reelId.value())
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "Reel [%s] is not in the books. Check the label.".formatted(reelId)));
    }

    record Receive(
            UUID commandId,
            ReelId reelId,
            MaterialCode materialCode,
            DepotId depotId,
            Length length,
            Money cost,
            Instant happenedAt) {}

    record Received(ReelId reelId, long lengthMm) {}

    record Rows(List<ReelBalance> rows, @Nullable String next) {}
}

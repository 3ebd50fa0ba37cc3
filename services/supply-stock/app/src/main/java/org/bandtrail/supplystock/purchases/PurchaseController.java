package org.bandtrail.supplystock.purchases;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** Orders to suppliers over HTTP. */
@RestController
@Tag(name = "purchases", description = "Orders to suppliers: placed, partly received, received, closed or cancelled")
final class PurchaseController {
    private final Work work;
    private final Commands commands;
    private final Ordering ordering;
    private final Purchases purchases;
    private final Clock clock;

    PurchaseController(Work work, Commands commands, Ordering ordering, Purchases purchases, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.ordering = ordering;
        this.purchases = purchases;
        this.clock = clock;
    }

    @PostMapping("/purchases")
    @Operation(summary = "Order from a supplier; unit prices follow from the quotes")
    Placed place(@RequestBody Place request, ActingPerson by) {
        return work.once(request.commandId(), request, Placed.class, () -> {
            Instant when = request.happenedAt() == null ? clock.instant() : request.happenedAt();
            LocalDate day = when.atOffset(ZoneOffset.UTC).toLocalDate();
            Ordering.Priced priced = ordering.price(request.purchaseId(), request.supplierId(), request.lines(), day);
            LocalDate expected =
                    request.expectedOn() == null ? day.plusDays(priced.leadTimeDays()) : request.expectedOn();
            commands.send(new PurchaseCommand.Place(
                    request.purchaseId(),
                    request.supplierId(),
                    request.depotId(),
                    priced.currency(),
                    priced.lines(),
                    expected,
                    by.id(),
                    new Occurred(when, clock.instant())));
            long total = priced.lines().stream().mapToLong(OrderedLine::price).sum();
            return new Placed(request.purchaseId(), expected, Money.of(total, priced.currency()));
        });
    }

    @PostMapping("/purchases/{purchaseId}/expect")
    @Operation(summary = "Expect an order on another day, for a reason")
    Known expect(@PathVariable PurchaseId purchaseId, @RequestBody Expect request, ActingPerson by) {
        return change(
                purchaseId,
                request.commandId(),
                request,
                occurred -> new PurchaseCommand.Expect(
                        purchaseId, request.expectedOn(), request.reason(), by.id(), occurred));
    }

    @PostMapping("/purchases/{purchaseId}/close")
    @Operation(summary = "Wait no longer for what has not come, for a reason")
    Known close(@PathVariable PurchaseId purchaseId, @RequestBody End request, ActingPerson by) {
        return change(
                purchaseId,
                request.commandId(),
                request,
                occurred -> new PurchaseCommand.Close(purchaseId, request.reason(), by.id(), occurred));
    }

    @PostMapping("/purchases/{purchaseId}/cancel")
    @Operation(summary = "Call an order off of which nothing has come, for a reason")
    Known cancel(@PathVariable PurchaseId purchaseId, @RequestBody End request, ActingPerson by) {
        return change(
                purchaseId,
                request.commandId(),
                request,
                occurred -> new PurchaseCommand.Cancel(purchaseId, request.reason(), by.id(), occurred));
    }

    private Known change(
            PurchaseId purchase, UUID commandId, Object request, Function<Occurred, PurchaseCommand> command) {
        return work.once(commandId, List.of(purchase.value(), request), Known.class, () -> {
            commands.send(command.apply(Occurred.at(clock.instant())));
            return new Known(purchase);
        });
    }

    @GetMapping("/purchases")
    @Operation(summary = "Orders, the newest first, a page at a time")
    Rows list(
            @RequestParam(defaultValue = "false") boolean open,
            @RequestParam(required = false) @Nullable String supplier,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<PurchaseRow> rows = purchases.page(open, supplier, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().purchaseId());
    }

    @GetMapping("/purchases/{purchaseId}")
    @Operation(summary = "One order with its lines: ordered, received and still to come")
    PurchaseRow.Whole one(@PathVariable PurchaseId purchaseId) {
        return purchases
                .one(purchaseId)
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "Order [%s] was never placed.".formatted(purchaseId)));
    }

    record Place(
            UUID commandId,
            PurchaseId purchaseId,
            SupplierId supplierId,
            DepotId depotId,
            List<Ordering.Wanted> lines,
            @Nullable LocalDate expectedOn,
            @Nullable Instant happenedAt) {}

    record Expect(UUID commandId, LocalDate expectedOn, String reason) {}

    record End(UUID commandId, String reason) {}

    record Placed(PurchaseId purchaseId, LocalDate expectedOn, Money total) {}

    record Known(PurchaseId purchaseId) {}

    record Rows(List<PurchaseRow> rows, @Nullable String next) {}
}

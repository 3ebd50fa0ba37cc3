package org.bandtrail.supplystock.receiving;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.supplystock.deliveries.Deliveries;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.bandtrail.supplystock.deliveries.DeliveryRow;
import org.bandtrail.supplystock.deliveries.Finding;
import org.bandtrail.supplystock.deliveries.LotRow;
import org.bandtrail.supplystock.deliveries.Lots;
import org.bandtrail.supplystock.purchases.PurchaseId;
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

/** Deliveries over HTTP: received, accepted, sent back. */
@RestController
@Tag(name = "deliveries", description = "What suppliers brought, counted and measured on arrival")
final class DeliveryController {
    private static final int MOST_NUMBERS = 500;

    private final Work work;
    private final Receiving receiving;
    private final AfterDelivery after;
    private final Deliveries deliveries;
    private final ReelNumbers numbers;
    private final Lots lots;
    private final Clock clock;

    DeliveryController(
            Work work,
            Receiving receiving,
            AfterDelivery after,
            Deliveries deliveries,
            ReelNumbers numbers,
            Lots lots,
            Clock clock) {
        this.work = work;
        this.receiving = receiving;
        this.after = after;
        this.deliveries = deliveries;
        this.numbers = numbers;
        this.lots = lots;
        this.clock = clock;
    }

    @PostMapping("/deliveries")
    @Operation(
            summary = "Receive a delivery, against an order or without; the answer names what is not as it should be")
    Taken receive(@RequestBody Receive request, ActingPerson by) {
        return work.once(request.commandId(), request, Taken.class, () -> {
            Instant when = request.happenedAt() == null ? clock.instant() : request.happenedAt();
            Receiving.Taken taken = receiving.take(request.arrived(), by.id(), new Occurred(when, clock.instant()));
            return new Taken(
                    request.deliveryId(),
                    taken.lines().stream()
                            .flatMap(line -> line.holdings().stream())
                            .map(each -> each.key())
                            .toList(),
                    taken.findings());
        });
    }

    @PostMapping("/deliveries/{deliveryId}/accept")
    @Operation(summary = "Accept reels and batches that were set aside, into the depot or a bin")
    Known accept(@PathVariable DeliveryId deliveryId, @RequestBody Accept request, ActingPerson by) {
        return work.once(request.commandId(), List.of(deliveryId.value(), request), Known.class, () -> {
            after.accept(deliveryId, request.keys(), request.bin(), by.id(), Occurred.at(clock.instant()));
            return new Known(deliveryId);
        });
    }

    @PostMapping("/deliveries/{deliveryId}/send-back")
    @Operation(summary = "Send reels and batches back to the supplier, for a reason")
    Known sendBack(@PathVariable DeliveryId deliveryId, @RequestBody SendBack request, ActingPerson by) {
        return work.once(request.commandId(), List.of(deliveryId.value(), request), Known.class, () -> {
            after.sendBack(deliveryId, request.keys(), request.reason(), by.id(), Occurred.at(clock.instant()));
            return new Known(deliveryId);
        });
    }

    @GetMapping("/deliveries")
    @Operation(summary = "Deliveries, the newest first, a page at a time")
    Rows list(
            @RequestParam(defaultValue = "false") boolean waiting,
            @RequestParam(required = false) @Nullable String purchase,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<DeliveryRow> rows = deliveries.page(waiting, purchase, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().deliveryId());
    }

    @GetMapping("/deliveries/{deliveryId}")
    @Operation(summary = "One delivery with its reels, batches and findings")
    DeliveryRow.Whole one(@PathVariable DeliveryId deliveryId) {
        return deliveries
                .one(deliveryId)
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "Delivery [%s] was never recorded.".formatted(deliveryId)));
    }

    @GetMapping("/deliveries/numbers")
    @Operation(summary = "The next free identities for what a supplier brings")
    Numbers numbers(@RequestParam SupplierId supplier, @RequestParam(defaultValue = "1") int count) {
        return new Numbers(numbers.next(supplier, Math.clamp(count, 1, MOST_NUMBERS)));
    }

    @GetMapping("/lots")
    @Operation(summary = "Reels and batches of a maker's lot, with expiry")
    LotRows lots(
            @RequestParam String lot,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<LotRow> rows = lots.ofLot(lot, after, size);
        LotRow last = rows.size() < size ? null : rows.getLast();
        return new LotRows(rows, last == null ? null : last.holding() + "/" + last.id());
    }

    record Receive(
            UUID commandId,
            DeliveryId deliveryId,
            @Nullable SupplierId supplierId,
            @Nullable PurchaseId purchaseId,
            DepotId depotId,
            @Nullable String deliveryNote,
            @Nullable String bin,
            boolean accept,
            List<Arrived.Line> lines,
            @Nullable Instant happenedAt) {
        Arrived arrived() {
            return new Arrived(deliveryId, supplierId, purchaseId, depotId, deliveryNote, bin, accept, lines);
        }
    }

    record Taken(DeliveryId deliveryId, List<String> keys, List<Finding> findings) {}

    record Accept(
            UUID commandId, List<String> keys, @Nullable String bin) {}

    record SendBack(UUID commandId, List<String> keys, String reason) {}

    record Known(DeliveryId deliveryId) {}

    record Numbers(List<String> numbers) {}

    record Rows(List<DeliveryRow> rows, @Nullable String next) {}

    record LotRows(List<LotRow> rows, @Nullable String next) {}
}

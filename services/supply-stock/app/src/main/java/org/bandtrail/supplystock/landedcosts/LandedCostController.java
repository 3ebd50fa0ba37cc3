package org.bandtrail.supplystock.landedcosts;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.supplystock.invoices.InvoiceId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Freight and duty over HTTP. */
@RestController
@Tag(name = "landed-costs", description = "Freight and duty, spread over the goods they brought")
final class LandedCostController {
    private final Work work;
    private final Spreading spreading;
    private final DeliveredLines lines;
    private final LandedCosts landedCosts;
    private final Clock clock;

    LandedCostController(Work work, Spreading spreading, DeliveredLines lines, LandedCosts landedCosts, Clock clock) {
        this.work = work;
        this.spreading = spreading;
        this.lines = lines;
        this.landedCosts = landedCosts;
        this.clock = clock;
    }

    @PostMapping("/landed-costs/preview")
    @Operation(summary = "What each line, reel and batch would bear; nothing is stored")
    Preview preview(@RequestBody Look request) {
        List<DeliveredLine> delivered = delivered(request.deliveries());
        if (delivered.stream().allMatch(line -> line.weight(request.basis()) == 0)) {
            throw new LandedCostRefused.NothingWeighs(request.basis());
        }
        List<Money> ofLines = LandedSplit.lines(request.amount(), request.basis(), delivered);
        List<LineShare> shares = new ArrayList<>();
        for (int index = 0; index < ofLines.size(); index++) {
            DeliveredLine line = delivered.get(index);
            shares.add(new LineShare(
                    line.deliveryId(),
                    line.line(),
                    line.materialCode(),
                    line.onReels(),
                    line.quantity(),
                    line.holdings().size(),
                    line.cost(),
                    ofLines.get(index)));
        }
        return new Preview(shares, LandedSplit.shares(request.amount(), request.basis(), delivered));
    }

    @PostMapping("/landed-costs")
    @Operation(summary = "Spread freight or duty over the goods of deliveries")
    Spread spread(@RequestBody SpreadIt request, ActingPerson by) {
        return work.once(request.commandId(), request, Spread.class, () -> {
            List<LandedShare> shares = spreading.spread(new LandedCostCommand.Spread(
                    request.landedCostId(),
                    request.what(),
                    request.amount(),
                    request.basis(),
                    delivered(request.deliveries()),
                    request.invoiceId(),
                    request.reference() == null ? "" : request.reference(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Spread(request.landedCostId(), shares);
        });
    }

    @PostMapping("/landed-costs/{landedCostId}/take-back")
    @Operation(summary = "Take a spreading back; every share is taken off again")
    Done takeBack(@PathVariable LandedCostId landedCostId, @RequestBody TakeBack request, ActingPerson by) {
        return work.once(request.commandId(), List.of(landedCostId.value(), request), Done.class, () -> {
            spreading.takeBack(new LandedCostCommand.TakeBack(
                    landedCostId, request.reason(), by.id(), Occurred.at(clock.instant())));
            return new Done(landedCostId);
        });
    }

    @GetMapping("/landed-costs")
    @Operation(summary = "Landed costs, newest first")
    Rows list(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<LandedCosts.Row> rows = landedCosts.page(after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().landedCostId());
    }

    @GetMapping("/landed-costs/deliveries")
    @Operation(summary = "The newest deliveries that can bear freight or duty")
    Choices deliveries() {
        return new Choices(lines.newest(), null);
    }

    @GetMapping("/landed-costs/{landedCostId}")
    @Operation(summary = "One landed cost with what each reel and batch bears")
    LandedCosts.Whole one(@PathVariable LandedCostId landedCostId) {
        return landedCosts.whole(landedCostId).orElseThrow(() -> new NoSuch("landed cost", landedCostId));
    }

    private List<DeliveredLine> delivered(List<String> deliveries) {
        List<DeliveredLine> delivered = lines.of(deliveries.stream()
                .map(id -> id.strip().toUpperCase(Locale.ROOT))
                .toList());
        if (delivered.isEmpty()) {
            throw new LandedCostRefused.NoDelivery(deliveries);
        }
        return delivered;
    }

    record Look(Money amount, Basis basis, List<String> deliveries) {}

    /**
     * @param quantity millimetres or pieces
     * @param count reels and batches
     * @param cost what the line cost when it was received
     */
    record LineShare(
            String deliveryId,
            int line,
            String materialCode,
            boolean onReels,
            long quantity,
            int count,
            Money cost,
            Money share) {}

    record Preview(List<LineShare> lines, List<LandedShare> shares) {}

    record SpreadIt(
            UUID commandId,
            LandedCostId landedCostId,
            LandedKind what,
            Money amount,
            Basis basis,
            List<String> deliveries,
            @Nullable InvoiceId invoiceId,
            @Nullable String reference) {}

    record Spread(LandedCostId landedCostId, List<LandedShare> shares) {}

    record TakeBack(UUID commandId, String reason) {}

    record Done(LandedCostId landedCostId) {}

    record Choices(
            List<DeliveredLines.Choice> rows, @Nullable String next) {}

    record Rows(List<LandedCosts.Row> rows, @Nullable String next) {}
}

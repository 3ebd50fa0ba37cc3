package org.bandtrail.supplystock.discrepancies;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Open questions between books and field over HTTP, and the ways to end them. */
@RestController
@Tag(name = "discrepancies", description = "Where books and field disagree, why perhaps, and how it is settled")
final class DiscrepancyController {
    private final Discrepancies discrepancies;
    private final Findings findings;
    private final PuttingRight puttingRight;
    private final Work work;
    private final Commands commands;
    private final Clock clock;

    DiscrepancyController(
            Discrepancies discrepancies,
            Findings findings,
            PuttingRight puttingRight,
            Work work,
            Commands commands,
            Clock clock) {
        this.discrepancies = discrepancies;
        this.findings = findings;
        this.puttingRight = puttingRight;
        this.work = work;
        this.commands = commands;
        this.clock = clock;
    }

    @GetMapping("/discrepancies")
    @Operation(summary = "Where books and field disagree, the oldest first, each with its likely causes")
    Discrepancies.Page list(
            @RequestParam(defaultValue = "true") boolean waiting,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        return discrepancies.page(clock.instant(), waiting, after, Math.clamp(limit, 1, 200));
    }

    @PostMapping("/discrepancies/settle")
    @Operation(summary = "Settle a place: what is missing is written off, what is short was found; needs a reason")
    Settled settle(@RequestBody Settle request, ActingPerson by) {
        return work.once(request.commandId(), request, Settled.class, () -> {
            Occurred now = Occurred.at(clock.instant());
            commands.send(
                    ofReels(request.material())
                            ? new ReelCommand.Settle(
                                    new ReelId(request.id()), request.place(), request.reason(), by.id(), now)
                            : new BatchCommand.Settle(
                                    new BatchId(request.id()), request.place(), request.reason(), by.id(), now));
            return new Settled(request.id(), request.place());
        });
    }

    @PostMapping("/discrepancies/put-right")
    @Operation(
            summary = "Put right what was told wrong, by one move or, with another reel, by two",
            description =
                    "through is where the material really is: a tree, a bag, a depot where it was measured. Without an"
                            + " amount the whole difference is put right.")
    Settled putRight(@RequestBody PutRight request, ActingPerson by) {
        return work.once(request.commandId(), request, Settled.class, () -> {
            OpenQuestion open = open(request.material(), request.id(), request.place());
            long balance = open.finding().quantity();
            Length measured = request.measured();
            Pieces counted = request.counted();
            long quantity = measured != null ? measured.mm() : counted != null ? counted.count() : Math.abs(balance);
            puttingRight.putRight(
                    new PuttingRight.Way(
                            request.material(),
                            request.id(),
                            request.place(),
                            request.through(),
                            quantity,
                            request.other(),
                            request.reason(),
                            by.id(),
                            Occurred.at(clock.instant())),
                    balance);
            return new Settled(request.id(), request.place());
        });
    }

    @PostMapping("/discrepancies/wait")
    @Operation(summary = "Let a question wait until a day, with a reason; it comes back earlier if its amount changes")
    Settled letWait(@RequestBody LetWait request, ActingPerson by) {
        return work.once(request.commandId(), request, Settled.class, () -> {
            OpenQuestion open = open(request.material(), request.id(), request.place());
            commands.send(new WaitingCommand.Wait(
                    Waiting.question(request.material(), request.id(), request.place()),
                    request.material(),
                    request.id(),
                    request.place(),
                    open.finding().quantity(),
                    request.until(),
                    request.reason(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Settled(request.id(), request.place());
        });
    }

    private OpenQuestion open(String material, String id, Place place) {
        ofReels(material);
        return findings.at(material, id, place).orElseThrow(() -> new WaitingRefused.NothingOpen(material, id, place));
    }

    private static boolean ofReels(String material) {
        return switch (material) {
            case "reel" -> true;
            case "batch" -> false;
            default ->
                throw new IllegalArgumentException("Material [%s] is neither reel nor batch.".formatted(material));
        };
    }

    record Settle(UUID commandId, String material, String id, Place place, String reason) {}

    record PutRight(
            UUID commandId,
            String material,
            String id,
            Place place,
            Place through,
            @Nullable String other,
            @Nullable Length measured,
            @Nullable Pieces counted,
            String reason) {}

    record LetWait(UUID commandId, String material, String id, Place place, LocalDate until, String reason) {}

    record Settled(String id, Place place) {}
}

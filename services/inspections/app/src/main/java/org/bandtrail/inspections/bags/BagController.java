package org.bandtrail.inspections.bags;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Bags and loads over HTTP. */
@RestController
@Tag(name = "disposal", description = "Waste bags and the loads they leave with")
final class BagController {
    private static final int MOST_BAGS = 500;
    private final Work work;
    private final Commands commands;
    private final BagContents contents;
    private final Clock clock;

    BagController(Work work, Commands commands, BagContents contents, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.contents = contents;
        this.clock = clock;
    }

    /** A load that left. */
    record LoadRequest(
            UUID commandId,
            LoadId loadId,
            List<BagId> bagIds,

            @Schema(description = "Code of who took it, never a person's name", example = "CARRIER-2")
            String carrier,

            Instant happenedAt) {}

    /** What is said about one bag of the load. */
    record BagAnswer(BagId bagId, List<String> flags) {}

    /** What a load is answered with. */
    record LoadAnswer(LoadId loadId, List<BagAnswer> bags) {}

    /** A page of bags. */
    record Bags(List<BagContents.BagRow> rows, @Nullable String next) {}

    /** A page of loads. */
    record Loads(List<BagContents.LoadRow> rows, @Nullable String next) {}

    @PostMapping("/loads")
    @Operation(
            summary = "Record that bags left with a load",
            description = "Always accepted: an unknown bag and one that had already gone are flagged. Contents told"
                    + " later for a time before the bag left follow it to this load.")
    LoadAnswer dispose(@RequestBody LoadRequest request, ActingPerson acting) {
        if (request.bagIds().isEmpty() || request.bagIds().size() > MOST_BAGS) {
            throw new IllegalArgumentException("A load of [%d] bags is not understood. Name 1 to %d bags."
                    .formatted(request.bagIds().size(), MOST_BAGS));
        }
        return work.once(request.commandId(), request, LoadAnswer.class, () -> {
            Doer doer = new Doer(null, acting.id(), acting.id());
            Occurred occurred = new Occurred(request.happenedAt(), clock.instant());
            List<BagAnswer> bags = new ArrayList<>();
            for (BagId bag : new LinkedHashSet<>(request.bagIds())) {
                var takeAway = new BagCommand.TakeAway(bag, request.loadId(), request.carrier(), doer, occurred);
                bags.add(new BagAnswer(bag, flags(commands.ask(takeAway))));
            }
            return new LoadAnswer(request.loadId(), bags);
        });
    }

    private static List<String> flags(@Nullable Object events) {
        if (!(events instanceof List<?> list)) {
            throw new IllegalStateException("A bag gave no answer.");
        }
        return list.stream()
                .filter(BagEvent.TakenAway.class::isInstance)
                .flatMap(event -> ((BagEvent.TakenAway) event).flags().stream())
                .map(BagFlag::spelt)
                .toList();
    }

    @GetMapping("/bags")
    @Operation(
            summary = "Bags and what is in them",
            description = "A bag that has gone shows the load it left with; a bag called LOOSE-<person> holds waste for"
                    + " which nobody named a bag.")
    Bags bags(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "200") int limit) {
        int size = Math.clamp(limit, 1, 1_000);
        List<BagContents.BagRow> rows = contents.bags(after, size);
        return new Bags(rows, rows.size() < size ? null : rows.getLast().bagId());
    }

    @GetMapping("/loads")
    @Operation(summary = "Loads and what they took away, by load identity")
    Loads loads(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "200") int limit) {
        int size = Math.clamp(limit, 1, 1_000);
        List<BagContents.LoadRow> rows = contents.loads(after, size);
        return new Loads(rows, rows.size() < size ? null : rows.getLast().loadId());
    }
}

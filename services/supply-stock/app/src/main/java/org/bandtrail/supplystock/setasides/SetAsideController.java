package org.bandtrail.supplystock.setasides;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Setting aside and releasing by hand, over HTTP. */
@RestController
@Tag(name = "set-aside", description = "Stock at a depot that must not be used")
final class SetAsideController {
    private final Work work;
    private final AsideDesk desk;
    private final SetAsides aside;
    private final Clock clock;

    SetAsideController(Work work, AsideDesk desk, SetAsides aside, Clock clock) {
        this.work = work;
        this.desk = desk;
        this.aside = aside;
        this.clock = clock;
    }

    @PostMapping("/set-aside")
    @Operation(summary = "Set a reel or pieces aside, with a reason; they are not handed out until released")
    Done setAside(@RequestBody Asked request, ActingPerson by) {
        return work.once(
                request.commandId(),
                List.of("set aside", request),
                Done.class,
                () -> desk.setAside(request, by.id(), now()));
    }

    @PostMapping("/set-aside/release")
    @Operation(summary = "Release a reel or pieces for use, with a reason")
    Done release(@RequestBody Asked request, ActingPerson by) {
        return work.once(
                request.commandId(),
                List.of("release", request),
                Done.class,
                () -> desk.release(request, by.id(), now()));
    }

    private Occurred now() {
        return Occurred.at(clock.instant());
    }

    @GetMapping("/set-aside")
    @Operation(summary = "What stands aside, a page at a time, by depot")
    Rows list(
            @RequestParam(required = false) @Nullable String depot,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<SetAsideRow> rows = aside.page(depot, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().key());
    }

    record Asked(
            UUID commandId,
            DepotId depotId,
            @Nullable ReelId reelId,
            @Nullable BatchId batchId,
            @Nullable Pieces pieces,
            @Nullable String mark,
            String reason) {
        BatchId batch() {
            if (batchId == null) {
                throw new IllegalArgumentException("Neither a reel nor a batch is named. Scan a label.");
            }
            return batchId;
        }
    }

    /** @param at when the books learnt of it: by this the move can be taken back, see {@code takebacks} */
    record Done(Place place, long quantity, @Nullable Instant at) {}

    record Rows(List<SetAsideRow> rows, @Nullable String next) {}
}

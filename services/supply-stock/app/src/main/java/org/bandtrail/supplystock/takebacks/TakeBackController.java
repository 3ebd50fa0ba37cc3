package org.bandtrail.supplystock.takebacks;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.recalls.Recalls;
import org.bandtrail.supplystock.relocations.Relocating;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Taking back the last move, over HTTP. */
@RestController
@Tag(name = "take-backs", description = "The opposite of the move just made")
final class TakeBackController {
    private static final String REASON = "taken back";
    private final Work work;
    private final LastMoves lastMoves;
    private final Relocating relocating;
    private final Recalls recalls;
    private final Clock clock;

    TakeBackController(Work work, LastMoves lastMoves, Relocating relocating, Recalls recalls, Clock clock) {
        this.work = work;
        this.lastMoves = lastMoves;
        this.relocating = relocating;
        this.recalls = recalls;
        this.clock = clock;
    }

    @PostMapping("/take-backs")
    @Operation(summary = "Move back what was moved a few minutes ago, if nothing else moved it since: all or nothing")
    Back takeBack(@RequestBody Asked request, ActingPerson by) {
        return work.once(request.commandId(), List.of("take back", request), Back.class, () -> {
            lastMoves.upToDate();
            Occurred now = Occurred.at(clock.instant());
            List<Line> lines = new ArrayList<>();
            for (ReelId reel : orNone(request.reels())) {
                LastMove last = lastMoves.ofReel(reel.value());
                StockMove opposite = opposite("reel", last, request, now);
                relocating.reel(reel, last.target(), last.source(), why(opposite), by.id(), now);
                lines.add(new Line(reel.value(), last.source()));
            }
            for (BatchId batch : orNone(request.batches())) {
                lines.add(new Line(batch.value(), pieces(batch, request, by.id(), now)));
            }
            return new Back(lines);
        });
    }

    private Place pieces(BatchId batch, Asked request, PersonId by, Occurred now) {
        LastMove last = lastMoves.ofBatch(batch.value());
        StockMove opposite = opposite("batch", last, request, now);
        relocating.batch(batch, last.target(), last.source(), new Pieces(last.quantity()), why(opposite), by, now);
        return last.source();
    }

    private StockMove opposite(String holding, LastMove last, Asked request, Occurred now) {
        StockMove opposite = last.opposite(request.at(), now.recorded());
        if (opposite == StockMove.RELEASED) {
            recalls.refuseIfRecalled(holding, last.subject());
        }
        return opposite;
    }

    private static Relocating.Why why(StockMove opposite) {
        return new Relocating.Why(opposite, null, REASON);
    }

    private static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }

    /** @param at when the books learnt of the move, as its answer said */
    record Asked(
            UUID commandId,
            @Nullable List<ReelId> reels,
            @Nullable List<BatchId> batches,
            Instant at) {}

    /** @param place where it is again */
    record Line(String id, Place place) {}

    record Back(List<Line> lines) {}
}

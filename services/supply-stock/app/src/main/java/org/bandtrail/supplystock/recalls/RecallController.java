package org.bandtrail.supplystock.recalls;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.bandtrail.supplystock.traces.Trace;
import org.bandtrail.supplystock.traces.TraceRows;
import org.bandtrail.supplystock.traces.TraceSubject;
import org.bandtrail.supplystock.traces.Traces;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** Recalls over HTTP. */
@RestController
@Tag(name = "recalls", description = "A maker's lot taken out of use everywhere at once")
final class RecallController {
    private final Work work;
    private final RecallDesk desk;
    private final Recalls recalls;
    private final Traces traces;
    private final TraceRows rowsOf;
    private final Clock clock;

    RecallController(Work work, RecallDesk desk, Recalls recalls, Traces traces, TraceRows rowsOf, Clock clock) {
        this.work = work;
        this.desk = desk;
        this.recalls = recalls;
        this.traces = traces;
        this.rowsOf = rowsOf;
        this.clock = clock;
    }

    @PostMapping("/recalls")
    @Operation(
            summary = "Recall a lot: all that lies in depots and bins goes aside in one work",
            description = "The supplier may be left out while only one supplier delivered something under this lot")
    Done start(@RequestBody Start request, ActingPerson by) {
        return work.once(
                request.commandId(),
                request,
                Done.class,
                () -> new Done(
                        request.recallId(),
                        desk.start(
                                request.recallId(),
                                request.lot(),
                                request.supplierId(),
                                request.reason(),
                                by.id(),
                                Occurred.at(clock.instant()))));
    }

    @PostMapping("/recalls/{recallId}/lift")
    @Operation(summary = "Lift a recall: what it set aside may be used again, as far as it is still there")
    Done lift(@PathVariable RecallId recallId, @RequestBody Lift request, ActingPerson by) {
        return work.once(
                request.commandId(),
                List.of(recallId, request),
                Done.class,
                () -> new Done(recallId, desk.lift(recallId, request.reason(), by.id(), Occurred.at(clock.instant()))));
    }

    @GetMapping("/recalls")
    @Operation(summary = "Recalls, the newest first")
    Rows<RecallRow> list(
            @RequestParam(defaultValue = "false") boolean open,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<RecallRow> rows = recalls.page(open, after, size);
        return new Rows<>(rows, rows.size() < size ? null : rows.getLast().recallId());
    }

    @GetMapping("/recalls/{recallId}")
    @Operation(summary = "One recall with how much of the lot is at each kind of place: aside, still out, on trees")
    Whole one(@PathVariable RecallId recallId) {
        RecallRow recall = known(recallId);
        return new Whole(
                recall,
                traces.trace(TraceSubject.lot(recall.lot(), recall.supplierId()))
                        .orElse(null));
    }

    @GetMapping("/recalls/{recallId}/places")
    @Operation(
            summary = "Where something of the lot is now, a page at a time, by place",
            description =
                    "kind: crew, vehicle, in-transit (to bring back), tree (for the programme lead), set-aside; several"
                            + " parted by commas; none for all places")
    Rows<Trace.At> places(
            @PathVariable RecallId recallId,
            @RequestParam(required = false) @Nullable String kind,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        RecallRow recall = known(recallId);
        List<Trace.At> rows =
                rowsOf.places(TraceSubject.lot(recall.lot(), recall.supplierId()), kind, false, after, size);
        return new Rows<>(rows, rows.size() < size ? null : rows.getLast().cursor());
    }

    private RecallRow known(RecallId recall) {
        return recalls.one(recall)
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "Recall [%s] is not in the books. Look in the list.".formatted(recall)));
    }

    record Start(
            UUID commandId,
            RecallId recallId,
            String lot,
            @Nullable SupplierId supplierId,
            String reason) {}

    record Lift(UUID commandId, String reason) {}

    record Done(RecallId recallId, List<AsideLine> lines) {}

    record Whole(RecallRow recall, @Nullable Trace trace) {}

    record Rows<T>(List<T> rows, @Nullable String next) {}
}

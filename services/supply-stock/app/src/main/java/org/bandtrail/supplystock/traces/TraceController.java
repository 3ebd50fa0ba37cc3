package org.bandtrail.supplystock.traces;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** Traces over HTTP. */
@RestController
@Tag(name = "traces", description = "From a lot to every tree, and from a tree back to the invoice")
final class TraceController {
    private final Traces traces;
    private final TraceRows rowsOf;

    TraceController(Traces traces, TraceRows rowsOf) {
        this.traces = traces;
        this.rowsOf = rowsOf;
    }

    @GetMapping("/traces/found")
    @Operation(summary = "What bears this identity: a lot, reel, batch, tree, waste bag or load")
    Rows<Trace.Found> found(@RequestParam String find) {
        return new Rows<>(traces.find(find), null);
    }

    @GetMapping("/traces")
    @Operation(
            summary = "Where it comes from (lot, delivery, order, invoices) and how much is at each kind of place",
            description = "A lot that several suppliers printed names them; ask again with one of them as supplier")
    Trace trace(
            @RequestParam String what,
            @RequestParam String id,
            @RequestParam(required = false) @Nullable String supplier) {
        return traces.trace(new TraceSubject(TraceOf.of(what), id, supplier))
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "No %s [%s] is in the books. Check the label.".formatted(what, id)));
    }

    @GetMapping("/traces/holdings")
    @Operation(summary = "The reels and batches of a trace, strips included, a page at a time")
    Rows<Trace.Part> holdings(
            @RequestParam String what,
            @RequestParam String id,
            @RequestParam(required = false) @Nullable String supplier,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<Trace.Part> rows = rowsOf.parts(new TraceSubject(TraceOf.of(what), id, supplier), after, size);
        return new Rows<>(
                rows,
                rows.size() < size
                        ? null
                        : rows.getLast().holding() + "|" + rows.getLast().id());
    }

    @GetMapping("/traces/places")
    @Operation(summary = "Each reel or batch at each place that holds or held it, a page at a time, by place")
    Rows<Trace.At> places(
            @RequestParam String what,
            @RequestParam String id,
            @RequestParam(required = false) @Nullable String supplier,
            @RequestParam(required = false) @Nullable String kind,
            @RequestParam(defaultValue = "true") boolean gone,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<Trace.At> rows = rowsOf.places(new TraceSubject(TraceOf.of(what), id, supplier), kind, gone, after, size);
        return new Rows<>(rows, rows.size() < size ? null : rows.getLast().cursor());
    }

    record Rows<T>(List<T> rows, @Nullable String next) {}
}

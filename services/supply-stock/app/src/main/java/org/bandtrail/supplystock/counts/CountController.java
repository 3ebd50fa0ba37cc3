package org.bandtrail.supplystock.counts;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.countrules.CountRulesInForce;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** Counts over HTTP. While a count is being counted no answer tells a figure of the books. */
@RestController
@Tag(name = "counts", description = "Blind counts of depots and bins, and what their differences post")
final class CountController {
    private final Work work;
    private final Commands commands;
    private final CountSheets sheets;
    private final CountRulesInForce rules;
    private final Counts counts;
    private final OpenScopes scopes;
    private final Clock clock;

    CountController(
            Work work,
            Commands commands,
            CountSheets sheets,
            CountRulesInForce rules,
            Counts counts,
            OpenScopes scopes,
            Clock clock) {
        this.work = work;
        this.commands = commands;
        this.sheets = sheets;
        this.rules = rules;
        this.counts = counts;
        this.scopes = scopes;
        this.clock = clock;
    }

    @PostMapping("/counts")
    @Operation(summary = "Open a count of a depot or a bin; the sheet is frozen now")
    Known open(@RequestBody Open request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            CountId count = request.countId() == null ? named(request.commandId()) : request.countId();
            scopes.take(count, request.place());
            List<SheetLine> sheet = sheets.of(request.place());
            commands.send(new CountCommand.Open(count, request.place(), sheet, rules.now(), by.id(), now()));
            return new Known(count);
        });
    }

    @PostMapping("/counts/{countId}/lines")
    @Operation(summary = "Enter what was counted: a measured length of a reel or pieces of a batch, 0 if not there")
    Known enter(@PathVariable CountId countId, @RequestBody Enter request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            Length measured = request.measured();
            Pieces counted = request.counted();
            String id = request.id().strip().toUpperCase(Locale.ROOT);
            Place scope = sheets.scope(countId);
            if (measured != null && counted == null) {
                enter(countId, request, sheets.found("reel", id, scope), measured.mm(), by);
            } else if (counted != null && measured == null) {
                enter(countId, request, sheets.found("batch", id, scope), counted.count(), by);
            } else {
                throw new IllegalArgumentException(
                        "Count of [%s]: give either a measured length or counted pieces.".formatted(id));
            }
            return new Known(countId);
        });
    }

    private void enter(CountId count, Enter request, SheetLine found, long quantity, ActingPerson by) {
        boolean alone = Boolean.TRUE.equals(request.alone());
        commands.send(new CountCommand.Enter(
                count, found.holding(), found.id(), request.place(), quantity, found, alone, by.id(), now()));
    }

    @PostMapping("/counts/{countId}/finish")
    @Operation(summary = "Finish a round; what differs too much is counted again in the next")
    Known finish(@PathVariable CountId countId, @RequestBody Finish request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            boolean restNotThere = Boolean.TRUE.equals(request.restNotThere());
            commands.send(new CountCommand.Finish(countId, restNotThere, by.id(), now()));
            return new Known(countId);
        });
    }

    @PostMapping("/counts/{countId}/reasons")
    @Operation(summary = "Say why a line differs")
    Known explain(@PathVariable CountId countId, @RequestBody Explain request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            SheetLine.Key line = new SheetLine.Key(request.holding(), request.id(), request.place());
            commands.send(new CountCommand.Explain(countId, line, request.reason(), by.id(), now()));
            return new Known(countId);
        });
    }

    @PostMapping("/counts/{countId}/approve")
    @Operation(summary = "Approve: the differences of all its reels and batches are posted, all or none")
    Known approve(@PathVariable CountId countId, @RequestBody Approve request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            if (commands.ask(new CountCommand.Approve(countId, by.id(), now())) instanceof List<?> events) {
                events.forEach(event ->
                        PostedDifferences.commands((CountEvent.Approved) event).forEach(commands::send));
            }
            scopes.giveBack(countId);
            return new Known(countId);
        });
    }

    @PostMapping("/counts/{countId}/cancel")
    @Operation(summary = "Give a count up; nothing is posted")
    Known cancel(@PathVariable CountId countId, @RequestBody Cancel request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new CountCommand.Cancel(countId, request.reason(), by.id(), now()));
            scopes.giveBack(countId);
            return new Known(countId);
        });
    }

    @GetMapping("/counts")
    @Operation(summary = "Counts, the newest first")
    Rows list(
            @RequestParam(defaultValue = "false") boolean open,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<CountRow> rows = counts.page(open, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().countId());
    }

    @GetMapping("/counts/{countId}")
    @Operation(summary = "One count with its lines; without the books' figures while it is counted")
    CountRow.Whole one(@PathVariable CountId countId) {
        return counts.whole(countId.value())
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND,
                        "Count [%s] is not known. Look at the list of counts.".formatted(countId)));
    }

    private Occurred now() {
        return Occurred.at(clock.instant());
    }

    private static CountId named(UUID command) {
        return new CountId("COUNT-" + command.toString().substring(24));
    }

    record Open(UUID commandId, @Nullable CountId countId, Place place) {}

    record Enter(
            UUID commandId,
            String id,
            @Nullable Place place,
            @Nullable Length measured,
            @Nullable Pieces counted,
            @Nullable Boolean alone) {}

    record Finish(UUID commandId, @Nullable Boolean restNotThere) {}

    record Explain(UUID commandId, String holding, String id, Place place, String reason) {}

    record Approve(UUID commandId) {}

    record Cancel(UUID commandId, String reason) {}

    record Known(CountId countId) {}

    record Rows(List<CountRow> rows, @Nullable String next) {}
}

package org.bandtrail.siteinstalls.bands;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Bands over HTTP. */
@RestController
@Tag(name = "bands", description = "What crews fitted; facts are never refused, contradictions are flagged")
final class BandController {
    private static final int LONGEST_PAGE = 500;
    private final Work work;
    private final BandIntake intake;
    private final BandBooks books;
    private final Bands bands;
    private final Removals removals;
    private final Clock clock;

    BandController(Work work, BandIntake intake, BandBooks books, Bands bands, Removals removals, Clock clock) {
        this.work = work;
        this.intake = intake;
        this.books = books;
        this.bands = bands;
        this.removals = removals;
        this.clock = clock;
    }

    @PostMapping("/bands")
    @Operation(
            summary = "Take down that a band was fitted",
            description = "Always accepted; the answer lists what contradicts the books. Lengths are text with a unit.")
    BandIntake.Fitted fit(@Valid @RequestBody FitRequest request, @Parameter(hidden = true) ActingPerson person) {
        return work.inOneTransaction(
                () -> intake.store(request, books.open(List.of(request.dated())).getFirst(), person.id()));
    }

    @PostMapping("/bands/check")
    @Operation(
            summary = "What to ask before a band is sent",
            description = "Same body as POST /bands; stores nothing. Each question names the value and what was"
                    + " perhaps meant.")
    Questions check(@Valid @RequestBody FitRequest request) {
        Books opened = books.open(List.of(request.dated())).getFirst();
        Occurred when = new Occurred(request.happenedAt(), clock.instant());
        return new Questions(BandCheck.questions(request.fitting(), opened, when).stream()
                .map(finding -> new Question(finding.field(), finding.value(), finding.perhaps(), finding.message()))
                .toList());
    }

    @PostMapping("/bands/sync")
    @Operation(
            summary = "Take down what a device collected",
            description = "All records in one transaction, each once by its commandId. A record that cannot be read is"
                    + " answered with a problem and does not hold up the others.")
    BandIntake.Results sync(@RequestBody BandIntake.Sync request, @Parameter(hidden = true) ActingPerson person) {
        return intake.sync(request, person.id());
    }

    @GetMapping("/bands")
    @Operation(
            summary = "Bands by identity; q is a part of band, tree, person or reel",
            description = "due=removal lists the bands that are up and past the day by which they must be off, or near"
                    + " it, those first that must come off first.")
    Rows list(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String tree,
            @RequestParam(required = false) @Nullable String state,
            @RequestParam(required = false) @Nullable String device,
            @RequestParam(required = false) @Nullable String due,
            @RequestParam(required = false) @Nullable String q,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        BandFilter asked = new BandFilter(site, tree, state, device, q, removalBy(due));
        List<BandView> rows = bands.page(asked, after, size);
        return new Rows(rows, rows.size() < size ? null : asked.next(rows.getLast()));
    }

    @GetMapping("/bands/removals")
    @Operation(summary = "How many bands are past the day by which they must be off, and how many are near it")
    Removals.Alarm removals(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String tree) {
        return removals.alarm(site, tree, LocalDate.now(clock));
    }

    private @Nullable LocalDate removalBy(@Nullable String due) {
        if (due == null || due.isBlank()) {
            return null;
        }
        if (!due.equals("removal")) {
            throw new IllegalArgumentException("Bands cannot be due for [%s] here. Use removal.".formatted(due));
        }
        return removals.lastDay(LocalDate.now(clock));
    }

    @GetMapping("/bands/{bandId}")
    @Operation(summary = "One band with everything that happened to it, newest first")
    BandView.Whole one(@PathVariable BandId bandId) {
        return bands.whole(bandId).orElseThrow(() -> new NoSuch("band", bandId));
    }

    record Question(String field, String value, @Nullable String perhaps, String message) {}

    record Questions(List<Question> questions) {}

    record Rows(List<BandView> rows, @Nullable String next) {}
}

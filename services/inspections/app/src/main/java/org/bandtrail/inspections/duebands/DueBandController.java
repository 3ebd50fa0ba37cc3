package org.bandtrail.inspections.duebands;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.kernel.BandId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Bands over HTTP, soonest look first. */
@RestController
@Tag(name = "bands", description = "Bands with their next look and why it is due")
final class DueBandController {
    private final DueBands bands;
    private final BandVisits visits;
    private final VisitPolicies policies;
    private final Clock clock;

    DueBandController(DueBands bands, BandVisits visits, VisitPolicies policies, Clock clock) {
        this.bands = bands;
        this.visits = visits;
        this.policies = policies;
        this.clock = clock;
    }

    /** A page of bands; {@code next} goes into {@code after}. */
    record Rows(List<DueBand> rows, @Nullable String next) {}

    /** One band with all visits, newest first, and all moves of its pieces. */
    record Whole(DueBand band, List<BandVisits.VisitRow> visits, List<BandVisits.MoveRow> moves) {}

    @GetMapping("/bands")
    @Operation(
            summary = "Bands by their next look",
            description = "Each row says when the next look is due and why: interval, load, guard, bycatch, not-read or"
                    + " must-remove, by the visit policy in force now.")
    Rows list(
            @RequestParam(required = false) @Nullable String site,
            @Parameter(description = "Only bands due by then: now, a day such as 2026-05-04, or a time")
                    @RequestParam(required = false)
                    @Nullable
                    String due,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "200") int limit) {
        Instant now = clock.instant();
        Instant dueBy = due == null ? null : dueBy(due, now);
        VisitPolicy policy = policies.judge().inForce(now);
        int size = Math.clamp(limit, 1, 2_000);
        List<DueBand> rows = bands.all(site).stream()
                .map(row -> DueBand.of(row, policy))
                .filter(band ->
                        dueBy == null || band.dueAt() != null && !band.dueAt().isAfter(dueBy))
                .sorted(DueBand.SOONEST_FIRST)
                .filter(band -> after == null || band.orderKey().compareTo(after) > 0)
                .limit(size)
                .toList();
        return new Rows(rows, rows.size() < size ? null : rows.getLast().orderKey());
    }

    @GetMapping("/bands/{bandId}")
    @Operation(summary = "One band with its visits and the moves of its pieces")
    Whole one(@PathVariable BandId bandId) {
        BandRow row = bands.one(bandId.value()).orElseThrow(() -> new NoSuch("band", bandId));
        VisitPolicy policy = policies.judge().inForce(clock.instant());
        return new Whole(DueBand.of(row, policy), visits.visits(bandId.value()), visits.moves(bandId.value()));
    }

    /** A day means its end, UTC. */
    private static Instant dueBy(String due, Instant now) {
        if ("now".equals(due)) {
            return now;
        }
        try {
            return due.contains("T")
                    ? Instant.parse(due)
                    : LocalDate.parse(due)
                            .plusDays(1)
                            .atStartOfDay(ZoneOffset.UTC)
                            .toInstant();
        } catch (DateTimeParseException unreadable) {
            throw new IllegalArgumentException(
                    "due [%s] is not a time. Write now, 2026-05-04 or 2026-05-04T07:30:00Z.".formatted(due),
                    unreadable);
        }
    }
}

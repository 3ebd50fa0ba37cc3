package org.bandtrail.siteinstalls.consents;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.SiteId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Questions about consents over HTTP. A day not given is today in UTC; who knows the yard's day gives it. */
@RestController
@Tag(name = "consents", description = "What owners allow on their sites, and until when")
final class ConsentReadController {
    private static final int LONGEST_PAGE = 500;
    private static final int LONGEST_WARNING = 365;
    private final Consents consents;
    private final Standings standings;
    private final Work work;
    private final Clock clock;

    ConsentReadController(Consents consents, Standings standings, Work work, Clock clock) {
        this.consents = consents;
        this.standings = standings;
        this.work = work;
        this.clock = clock;
    }

    @GetMapping("/consents")
    @Operation(summary = "All consents by identity, or those of one site, the newest first")
    Rows list(
            @RequestParam(required = false) @Nullable SiteId site,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        if (site != null) {
            return new Rows(consents.ofSite(site), null);
        }
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<ConsentView> rows = consents.page(after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().consentId());
    }

    @GetMapping("/consents/{consentId}")
    @Operation(summary = "One consent with its history, newest first")
    ConsentView.Whole one(@PathVariable ConsentId consentId) {
        return consents.whole(consentId).orElseThrow(() -> new NoSuch("consent", consentId));
    }

    @GetMapping("/consents/check")
    @Operation(
            summary = "Whether an activity is allowed at a site on a day",
            description = "Answers the consent it rests on; refused with what is known and what to do if none holds.")
    ConsentView check(
            @RequestParam SiteId site,
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(defaultValue = "BANDS") Activity activity,
            @RequestParam(required = false) @Nullable String pest) {
        return consents.mustHold(site, day(on), activity, pest);
    }

    @GetMapping("/consents/standing")
    @Operation(summary = "How every site stands on a day: holds, ends soon, ends today, none, bands without consent")
    Standing standing(
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<SiteStanding> rows = standings.page(day(on), after, size);
        return new Standing(rows, rows.size() < size ? null : rows.getLast().siteId(), standings.warning(day(on)));
    }

    @PostMapping("/consents/warning")
    @Operation(summary = "Change for how many days ahead one is warned, from a day on; earlier figures stay")
    Standings.Warning warn(
            @Valid @RequestBody ConsentRequests.WarnDays request, @Parameter(hidden = true) ActingPerson person) {
        if (request.days() < 1 || request.days() > LONGEST_WARNING) {
            throw new IllegalArgumentException(
                    "Days [%d] must be from 1 to %d.".formatted(request.days(), LONGEST_WARNING));
        }
        Standings.Warning warning =
                new Standings.Warning(request.since(), request.days(), request.source(), request.reason());
        return work.once(request.commandId(), request, Standings.Warning.class, () -> {
            if (!standings.warn(warning, person.id().value())) {
                throw new IllegalArgumentException(
                        "There is a figure from [%s] on already. Choose another day.".formatted(request.since()));
            }
            return warning;
        });
    }

    private LocalDate day(@Nullable LocalDate given) {
        return Objects.requireNonNullElseGet(given, () -> LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
    }

    record Rows(List<ConsentView> rows, @Nullable String next) {}

    record Standing(List<SiteStanding> rows, @Nullable String next, Standings.Warning warning) {}
}

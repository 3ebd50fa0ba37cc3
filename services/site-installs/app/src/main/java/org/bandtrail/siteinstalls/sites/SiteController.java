package org.bandtrail.siteinstalls.sites;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.sites.SiteCommand.RegisterSite;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Sites over HTTP. */
@RestController
@Tag(name = "sites", description = "Places where bands hang")
final class SiteController {
    private static final int LONGEST_PAGE = 500;
    private final Work work;
    private final Commands commands;
    private final Sites sites;
    private final Clock clock;

    SiteController(Work work, Commands commands, Sites sites, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.sites = sites;
        this.clock = clock;
    }

    @PostMapping("/sites")
    @Operation(
            summary = "Register a site",
            description = "lat and lon are degrees, WGS 84, given together or not at all. A taken identity is refused.")
    Registered register(@Valid @RequestBody Register request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Registered.class, () -> {
            Instant now = clock.instant();
            commands.send(new RegisterSite(
                    request.siteId(),
                    request.name(),
                    request.point(),
                    Objects.requireNonNullElse(request.accessNotes(), ""),
                    person.id(),
                    new Occurred(Objects.requireNonNullElse(request.happenedAt(), now), now)));
            return new Registered(request.siteId());
        });
    }

    @GetMapping("/sites")
    @Operation(summary = "All sites by identity, with their trees and the bands that hang there now")
    Rows list(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<SiteView> rows = sites.page(after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().siteId());
    }

    record Register(
            @NotNull UUID commandId,
            @NotNull SiteId siteId,
            @NotNull String name,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            @Nullable String accessNotes,
            @Nullable Instant happenedAt) {
        @Nullable
        Point point() {
            if (lat == null && lon == null) {
                return null;
            }
            if (lat == null || lon == null) {
                throw new IllegalArgumentException(
                        "lat [%s] and lon [%s] make a point together. Give both or none.".formatted(lat, lon));
            }
            return Point.ofDegrees(lat, lon);
        }
    }

    record Registered(SiteId siteId) {}

    record Rows(List<SiteView> rows, @Nullable String next) {}
}

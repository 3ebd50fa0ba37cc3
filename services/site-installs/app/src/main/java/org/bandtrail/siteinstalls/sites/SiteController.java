package org.bandtrail.siteinstalls.sites;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.boundaries.BoundaryReader;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.bandtrail.siteinstalls.sites.SiteCommand.OutlineSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.RegisterSite;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

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
            description = "lat and lon are degrees, WGS 84, given together or not at all. boundary is a"
                    + " GeoJSON polygon (RFC 7946). A taken identity is refused.")
    Registered register(@Valid @RequestBody Register request, @Parameter(hidden = true) ActingPerson person) {
        BoundaryReader.Read read = request.boundary() == null ? null : BoundaryReader.read(request.boundary());
        return work.once(request.commandId(), request, Registered.class, () -> {
            Instant now = clock.instant();
            Occurred when = new Occurred(Objects.requireNonNullElse(request.happenedAt(), now), now);
            commands.send(new RegisterSite(
                    request.siteId(),
                    request.name(),
                    request.point(),
                    Objects.requireNonNullElse(request.accessNotes(), ""),
                    person.id(),
                    when));
            if (read != null) {
                commands.send(new OutlineSite(request.siteId(), read.boundary(), person.id(), when));
            }
            return new Registered(request.siteId(), read == null ? List.of() : read.notes());
        });
    }

    @GetMapping("/sites")
    @Operation(summary = "All sites by identity, with their trees and the bands that hang there now")
    Rows list(@RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<SiteView> rows = sites.page(after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().siteId());
    }

    @GetMapping("/sites/{siteId}")
    @Operation(
            summary = "One site: boundary, hours, hazards with cautions, and every change with the value it replaced")
    SiteWhole one(@PathVariable SiteId siteId) {
        return sites.whole(siteId).orElseThrow(() -> new NoSuch("site", siteId));
    }

    @GetMapping("/sites/{siteId}/open")
    @Operation(summary = "Whether a crew may be there at a time of the site's own clock, such as 2026-06-01T14:30")
    OpeningHours.Answer open(@PathVariable SiteId siteId, @RequestParam LocalDateTime at) {
        return sites.hours(siteId).orElseThrow(() -> new NoSuch("site", siteId)).at(at);
    }

    @GetMapping(path = "/sites.geojson", produces = "application/geo+json")
    @Operation(summary = "All sites that have a place, as GeoJSON (RFC 7946); outsides run against the clock")
    SiteGeoJson geoJson() {
        return new SiteGeoJson("FeatureCollection", sites.features());
    }

    static @Nullable Point pointOf(@Nullable BigDecimal lat, @Nullable BigDecimal lon) {
        if (lat == null && lon == null) {
            return null;
        }
        if (lat == null || lon == null) {
            throw new IllegalArgumentException(
                    "lat [%s] and lon [%s] make a point together. Give both or none.".formatted(lat, lon));
        }
        return Point.ofDegrees(lat, lon);
    }

    record Register(
            @NotNull UUID commandId,
            @NotNull SiteId siteId,
            @NotNull String name,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            @Nullable String accessNotes,
            @Nullable JsonNode boundary,
            @Nullable Instant happenedAt) {
        @Nullable
        Point point() {
            return pointOf(lat, lon);
        }
    }

    record Registered(SiteId siteId, List<String> notes) {}

    record Rows(List<SiteView> rows, @Nullable String next) {}
}

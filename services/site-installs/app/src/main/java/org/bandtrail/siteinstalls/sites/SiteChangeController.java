package org.bandtrail.siteinstalls.sites;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.boundaries.BoundaryReader;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.hazards.HazardKinds;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Changes of a site over HTTP. Each keeps the value it replaces. */
@RestController
@RequestMapping("/sites/{siteId}")
@Tag(name = "sites", description = "Places where bands hang")
final class SiteChangeController {
    private final Work work;
    private final Commands commands;
    private final HazardKinds kinds;
    private final Clock clock;

    SiteChangeController(Work work, Commands commands, HazardKinds kinds, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.kinds = kinds;
        this.clock = clock;
    }

    @PostMapping("/correct")
    @Operation(summary = "Correct name, point and access notes", description = "Give all of them, changed or not.")
    Changed correct(
            @PathVariable SiteId siteId,
            @Valid @RequestBody Correct request,
            @Parameter(hidden = true) ActingPerson person) {
        SiteDetails details = new SiteDetails(
                request.name(),
                SiteController.pointOf(request.lat(), request.lon()),
                Objects.requireNonNullElse(request.accessNotes(), ""));
        return changed(
                siteId,
                request.commandId(),
                request,
                List.of(),
                when -> new SiteCommand.CorrectSite(siteId, details, person.id(), when));
    }

    @PostMapping("/boundary")
    @Operation(
            summary = "Draw or redraw the boundary",
            description = "A GeoJSON polygon (RFC 7946). A ring that runs the wrong way round is turned; notes say so.")
    Changed outline(
            @PathVariable SiteId siteId,
            @Valid @RequestBody Outline request,
            @Parameter(hidden = true) ActingPerson person) {
        BoundaryReader.Read read = BoundaryReader.read(request.boundary());
        return changed(
                siteId,
                request.commandId(),
                request,
                read.notes(),
                when -> new SiteCommand.OutlineSite(siteId, read.boundary(), person.id(), when));
    }

    @PostMapping("/hours")
    @Operation(summary = "Say when a crew may be there", description = "All rows; no weekly row at all is any time.")
    Changed hours(
            @PathVariable SiteId siteId,
            @Valid @RequestBody Hours request,
            @Parameter(hidden = true) ActingPerson person) {
        return changed(
                siteId,
                request.commandId(),
                request,
                List.of(),
                when -> new SiteCommand.SetHours(siteId, request.hours(), person.id(), when));
    }

    @PostMapping("/hazards")
    @Operation(summary = "Say what can hurt somebody there", description = "All of them; kinds as in /hazard-kinds.")
    Changed hazards(
            @PathVariable SiteId siteId,
            @Valid @RequestBody Hazards request,
            @Parameter(hidden = true) ActingPerson person) {
        kinds.mustKnow(request.hazards());
        return changed(
                siteId,
                request.commandId(),
                request,
                List.of(),
                when -> new SiteCommand.SetHazards(siteId, request.hazards(), person.id(), when));
    }

    @PostMapping("/close")
    @Operation(summary = "Close a site for plans", description = "What hangs there is still looked at and taken down.")
    Changed close(
            @PathVariable SiteId siteId,
            @Valid @RequestBody Close request,
            @Parameter(hidden = true) ActingPerson person) {
        return changed(
                siteId,
                request.commandId(),
                request,
                List.of(),
                when -> new SiteCommand.CloseSite(siteId, request.on(), request.reason(), person.id(), when));
    }

    @PostMapping("/reopen")
    @Operation(summary = "Open a closed site again")
    Changed reopen(
            @PathVariable SiteId siteId,
            @Valid @RequestBody Reopen request,
            @Parameter(hidden = true) ActingPerson person) {
        return changed(
                siteId,
                request.commandId(),
                request,
                List.of(),
                when -> new SiteCommand.ReopenSite(siteId, request.reason(), person.id(), when));
    }

    private Changed changed(
            SiteId siteId,
            UUID commandId,
            Object request,
            List<String> notes,
            Function<Occurred, SiteCommand> command) {
        return work.once(commandId, List.of(siteId.value(), request), Changed.class, () -> {
            Instant now = clock.instant();
            commands.send(command.apply(Occurred.at(now)));
            return new Changed(siteId, notes);
        });
    }

    record Correct(
            @NotNull UUID commandId,
            @NotNull String name,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            @Nullable String accessNotes) {}

    record Outline(@NotNull UUID commandId, @NotNull JsonNode boundary) {}

    record Hours(@NotNull UUID commandId, @NotNull OpeningHours hours) {}

    record Hazards(@NotNull UUID commandId, @NotNull List<Hazard> hazards) {}

    record Close(
            @NotNull UUID commandId,
            @NotNull LocalDate on,
            @NotNull String reason) {}

    record Reopen(@NotNull UUID commandId, @NotNull String reason) {}

    record Changed(SiteId siteId, List<String> notes) {}
}

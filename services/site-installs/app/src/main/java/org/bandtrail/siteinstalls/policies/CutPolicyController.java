package org.bandtrail.siteinstalls.policies;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.girths.GirthLimits;
import org.bandtrail.siteinstalls.policies.CutPolicyCommand.PublishCutLengths;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The cut-length policy over HTTP. */
@RestController
@Tag(name = "policies", description = "Values of the trade as versioned data with source and reason")
final class CutPolicyController {
    private final Work work;
    private final Commands commands;
    private final CutPolicies policies;
    private final Clock clock;

    CutPolicyController(Work work, Commands commands, CutPolicies policies, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.policies = policies;
        this.clock = clock;
    }

    @GetMapping("/policies/cut-lengths")
    @Operation(summary = "All versions of the cut-length policy, the newest first")
    Rows all() {
        return new Rows(policies.all(), null);
    }

    @PostMapping("/policies/cut-lengths")
    @Operation(
            summary = "Publish a version that holds from a day",
            description = "Lengths are text with their unit. Earlier versions stay; source and reason are required.")
    Published publish(@Valid @RequestBody Publish request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Published.class, () -> {
            commands.send(new PublishCutLengths(
                    CutPolicy.ID,
                    request.values().cutLengths(),
                    request.validFrom(),
                    request.source(),
                    request.reason(),
                    person.id(),
                    Occurred.at(clock.instant())));
            return new Published(request.validFrom());
        });
    }

    record Publish(
            @NotNull UUID commandId,
            @NotNull LocalDate validFrom,
            @NotNull String source,
            @NotNull String reason,
            @NotNull @Valid Values values) {}

    /** The values as people write them; see {@link CutLengths} for meaning and range. */
    record Values(
            @NotNull Length tapeOverlap,
            @NotNull Length tapeTab,
            @NotNull Length tapeWidest,
            @NotNull Length meshExtra,
            @NotNull Length meshLeastStandOff,
            @NotNull Length meshWidestOpening,
            @NotNull Length fastenerSpacing,
            int fastenerMinimum,
            @NotNull Length heightUsual,
            @NotNull Length heightLowest,
            @NotNull Length heightHighest,
            @NotNull Length girthMinimum,
            @NotNull Length girthQuestionAbove,
            int girthChangePermille,
            int removeAfterDays,
            int lateAfterDays) {
        CutLengths cutLengths() {
            return new CutLengths(
                    new CutLengths.TapeRule(tapeOverlap, tapeTab, tapeWidest),
                    new CutLengths.MeshRule(meshExtra, meshLeastStandOff, meshWidestOpening),
                    new CutLengths.FastenerRule(fastenerSpacing, Pieces.of(fastenerMinimum)),
                    new CutLengths.HeightRule(heightUsual, heightLowest, heightHighest),
                    new GirthLimits(girthMinimum, girthQuestionAbove, girthChangePermille),
                    removeAfterDays,
                    lateAfterDays);
        }
    }

    record Published(LocalDate validFrom) {}

    record Rows(List<CutPolicyView> rows, @Nullable String next) {}
}

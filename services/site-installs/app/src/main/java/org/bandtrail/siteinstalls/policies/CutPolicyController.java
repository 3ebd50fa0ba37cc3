package org.bandtrail.siteinstalls.policies;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.siteinstalls.policies.CutPolicyCommand.PublishCutLengths;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The cut-length policy over HTTP. */
@RestController
@Tag(name = "policies", description = "Values of the trade as versioned data with source and reason")
final class CutPolicyController {
    private final Work work;
    private final Commands commands;
    private final CutPolicies policies;
    private final Clock clock;
    private final List<ValueGuide> guides;

    CutPolicyController(Work work, Commands commands, CutPolicies policies, Clock clock, List<ValueGuide> guides) {
        this.work = work;
        this.commands = commands;
        this.policies = policies;
        this.clock = clock;
        this.guides = guides;
    }

    @GetMapping("/policies/cut-lengths")
    @Operation(summary = "All versions of the cut-length policy, the newest first")
    Rows all() {
        return new Rows(policies.all(), null);
    }

    @PostMapping("/policies/cut-lengths")
    @Operation(
            summary = "Publish a version that holds from a day",
            description = "Lengths are text with their unit. Earlier versions stay; source and reason are required."
                    + " Values of the setup that are left out stay as the version before them has them.")
    Published publish(@Valid @RequestBody CutPolicyRequest request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Published.class, () -> {
            commands.send(new PublishCutLengths(
                    CutPolicy.ID,
                    values(request),
                    request.scope(),
                    request.validFrom(),
                    request.validUntil(),
                    request.source(),
                    request.reason(),
                    person.id(),
                    Occurred.at(clock.instant())));
            return new Published(request.validFrom());
        });
    }

    @PostMapping("/policies/cut-lengths/check")
    @Operation(
            summary = "What to ask before a version is published",
            description = "Same body as POST /policies/cut-lengths; stores nothing. Each question names the value and"
                    + " what was perhaps meant.")
    Questions check(@Valid @RequestBody CutPolicyRequest request) {
        return new Questions(PolicyQuestions.about(values(request), guides));
    }

    @GetMapping("/policies/cut-lengths/in-force")
    @Operation(
            summary = "The version in force on a day for a pest in a programme, else for the pest, else of the house")
    PolicyPage inForce(
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(required = false) @Nullable String programme,
            @RequestParam(required = false) @Nullable String pest) {
        LocalDate day = on == null ? LocalDate.ofInstant(clock.instant(), clock.getZone()) : on;
        return page(policies.on(day, programme, pest).version(), null);
    }

    @GetMapping("/policies/cut-lengths/{version}")
    @Operation(
            summary = "One version: each value with where it comes from, and what is different from another version",
            description = "against names the version to compare with; left out, the one it replaced.")
    PolicyPage one(@PathVariable int version, @RequestParam(required = false) @Nullable Integer against) {
        return page(version, against);
    }

    private PolicyPage page(int version, @Nullable Integer against) {
        return PolicyPage.of(policies.all(), version, against, guides);
    }

    private CutLengths values(CutPolicyRequest request) {
        CutPolicyVersion before = policies.on(request.validFrom(), request.programme(), request.pest());
        return request.values().cutLengths(before.values().setup());
    }

    record Published(LocalDate validFrom) {}

    record Rows(List<CutPolicyView> rows, @Nullable String next) {}

    record Questions(List<PolicyQuestions.Question> questions) {}
}

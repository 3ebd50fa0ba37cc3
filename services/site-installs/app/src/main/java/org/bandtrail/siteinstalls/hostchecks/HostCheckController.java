package org.bandtrail.siteinstalls.hostchecks;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.hostchecks.HostCheckCommand.NoteHostCheck;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Host checks over HTTP. */
@RestController
@Tag(name = "host checks", description = "A short key that tells a host from its look-alikes, with a confidence")
final class HostCheckController {
    private static final int LONGEST_PAGE = 500;
    private final Work work;
    private final Commands commands;
    private final HostKeys keys;
    private final HostChecks checks;
    private final Clock clock;

    HostCheckController(Work work, Commands commands, HostKeys keys, HostChecks checks, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.keys = keys;
        this.checks = checks;
        this.clock = clock;
    }

    @GetMapping("/host-checks/keys")
    @Operation(summary = "The keys with their questions, their sources and what each answer counts for")
    HostKeys keys() {
        return keys;
    }

    @PostMapping("/host-checks/next")
    @Operation(
            summary = "The next question after these answers, and what they say so far",
            description = "Stores nothing. question is null when the key is at its end.")
    Next next(@Valid @RequestBody SoFar request) {
        HostKey key = key(request.pest());
        return new Next(
                key.next(request.answers()).orElse(null),
                request.answers().size() + 1,
                key.questions().size(),
                key.verdict(request.answers()));
    }

    @PostMapping("/host-checks")
    @Operation(summary = "Store what was answered at a tree; the verdict is worked out and stored with it")
    HostVerdict note(@Valid @RequestBody Check request, @Parameter(hidden = true) ActingPerson person) {
        HostKey key = key(request.pest());
        HostVerdict verdict = key.verdict(request.answers());
        return work.once(request.commandId(), request, HostVerdict.class, () -> {
            Instant now = clock.instant();
            commands.send(new NoteHostCheck(
                    request.treeId(),
                    key,
                    request.answers(),
                    person.id(),
                    new Occurred(Objects.requireNonNullElse(request.happenedAt(), now), now)));
            return verdict;
        });
    }

    @GetMapping("/host-checks")
    @Operation(summary = "Every check of one tree, the latest first")
    Made made(@RequestParam TreeId tree) {
        return new Made(checks.of(tree));
    }

    @GetMapping("/host-checks/findings")
    @Operation(summary = "Bands up on trees that nobody checked, that are no host, not surely one, or gone")
    Findings findings(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String tree,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<HostCheckView.Finding> rows = checks.findings(site, tree, after, size);
        return new Findings(rows, rows.size() < size ? null : rows.getLast().bandId());
    }

    private HostKey key(EppoCode pest) {
        return keys.of(pest).orElseThrow(() -> new NoSuch("host key for pest", pest));
    }

    record SoFar(@NotNull EppoCode pest, @NotNull List<HostAnswer> answers) {}

    record Next(@Nullable HostQuestion question, int number, int of, HostVerdict soFar) {}

    record Check(
            @NotNull UUID commandId,
            @NotNull TreeId treeId,
            @NotNull EppoCode pest,
            @NotNull List<HostAnswer> answers,
            @Nullable Instant happenedAt) {}

    record Made(List<HostCheckView> rows) {}

    record Findings(
            List<HostCheckView.Finding> rows, @Nullable String next) {}
}

package org.bandtrail.supplystock.grants;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Grants over HTTP. */
@RestController
@Tag(name = "grants", description = "Where the money comes from")
final class GrantController {
    private static final int MOST = 1_000;
    private final Work work;
    private final Commands commands;
    private final Grants grants;
    private final Clock clock;

    GrantController(Work work, Commands commands, Grants grants, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.grants = grants;
        this.clock = clock;
    }

    @GetMapping("/grants")
    @Operation(summary = "Grants by identity")
    Rows list(@RequestParam(defaultValue = "") String after, @RequestParam(defaultValue = "200") int limit) {
        int most = Math.clamp(limit, 1, MOST);
        List<GrantRow> rows = grants.after(after, most + 1);
        boolean more = rows.size() > most;
        List<GrantRow> page = more ? rows.subList(0, most) : rows;
        return new Rows(page, more ? page.getLast().grantId() : null);
    }

    @GetMapping("/grants/{grantId}")
    @Operation(summary = "One grant and what was agreed about it")
    Whole one(@PathVariable GrantId grantId) {
        GrantRow grant = grants.one(grantId).orElseThrow(() -> new NoSuch("grant", grantId));
        return new Whole(grant, grants.history(grantId));
    }

    @PostMapping("/grants")
    @Operation(summary = "Enter a grant")
    Known register(@RequestBody Register request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new GrantCommand.Register(
                    request.grantId(),
                    new GrantTerms(request.name(), request.amount(), request.from(), request.until()),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(request.grantId());
        });
    }

    @PostMapping("/grants/{grantId}/terms")
    @Operation(summary = "Change the terms of a grant, with a reason")
    Known change(@PathVariable GrantId grantId, @RequestBody Change request, ActingPerson by) {
        return work.once(request.commandId(), new Asked(grantId, request), Known.class, () -> {
            commands.send(new GrantCommand.ChangeTerms(
                    grantId,
                    new GrantTerms(request.name(), request.amount(), request.from(), request.until()),
                    request.reason(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(grantId);
        });
    }

    record Register(UUID commandId, GrantId grantId, String name, Money amount, LocalDate from, LocalDate until) {}

    record Change(UUID commandId, String name, Money amount, LocalDate from, LocalDate until, String reason) {}

    record Asked(GrantId grantId, Change change) {}

    record Known(GrantId grantId) {}

    record Whole(GrantRow grant, List<GrantRow.Agreed> history) {}

    record Rows(List<GrantRow> rows, @Nullable String next) {}
}

package org.bandtrail.supplystock.tolerances;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The policy over HTTP. */
@RestController
@Tag(name = "tolerances", description = "How much an invoice may differ before a person decides")
final class ToleranceController {
    private final Work work;
    private final Commands commands;
    private final TolerancePolicies policies;
    private final Clock clock;

    ToleranceController(Work work, Commands commands, TolerancePolicies policies, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.policies = policies;
        this.clock = clock;
    }

    @PostMapping("/tolerances")
    @Operation(summary = "Let these tolerances hold from now on")
    Known set(@RequestBody SetTolerances request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new ToleranceCommand.Set(
                    Tolerance.MATCH,
                    request.tolerances(),
                    request.source(),
                    request.reason(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(request.tolerances());
        });
    }

    @GetMapping("/tolerances")
    @Operation(summary = "Every policy, the one that holds first")
    Rows list() {
        return new Rows(policies.all(), null);
    }

    record SetTolerances(UUID commandId, Tolerances tolerances, String source, String reason) {}

    record Known(Tolerances tolerances) {}

    record Rows(
            List<TolerancePolicies.Policy> rows, @Nullable String next) {}
}

package org.bandtrail.supplystock.depots;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Depots over HTTP. */
@RestController
@Tag(name = "depots", description = "Stores from which crews are served")
final class DepotController {
    private final Work work;
    private final Commands commands;
    private final Depots depots;
    private final Clock clock;

    DepotController(Work work, Commands commands, Depots depots, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.depots = depots;
        this.clock = clock;
    }

    @PostMapping("/depots")
    @Operation(summary = "Open a depot")
    Known open(@RequestBody Open request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(
                    new DepotCommand.Open(request.depotId(), request.name(), by.id(), Occurred.at(clock.instant())));
            return new Known(request.depotId());
        });
    }

    @GetMapping("/depots")
    @Operation(summary = "All depots")
    Rows list() {
        return new Rows(depots.all(), null);
    }

    record Open(UUID commandId, DepotId depotId, String name) {}

    record Known(DepotId depotId) {}

    record Rows(List<DepotRow> rows, @Nullable String next) {}
}

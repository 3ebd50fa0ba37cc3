package org.bandtrail.supplystock.crews;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Crews over HTTP. */
@RestController
@Tag(name = "crews", description = "The people who go out together from one depot")
final class CrewController {
    private final Work work;
    private final Commands commands;
    private final Crews crews;
    private final Clock clock;

    CrewController(Work work, Commands commands, Crews crews, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.crews = crews;
        this.clock = clock;
    }

    @PostMapping("/crews")
    @Operation(summary = "Form a crew")
    Known form(@RequestBody Form request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new CrewCommand.Form(
                    request.crewId(),
                    request.name(),
                    request.depotId(),
                    request.people(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(request.crewId());
        });
    }

    @PutMapping("/crews/{crewId}/people")
    @Operation(summary = "Say who is in the crew from now on")
    Known people(@PathVariable CrewId crewId, @RequestBody People request, ActingPerson by) {
        return work.once(request.commandId(), List.of(crewId.value(), request), Known.class, () -> {
            commands.send(
                    new CrewCommand.ChangePeople(crewId, request.people(), by.id(), Occurred.at(clock.instant())));
            return new Known(crewId);
        });
    }

    @GetMapping("/crews")
    @Operation(summary = "All crews")
    Rows list() {
        return new Rows(crews.all(), null);
    }

    record Form(UUID commandId, CrewId crewId, String name, DepotId depotId, List<PersonId> people) {}

    record People(UUID commandId, List<PersonId> people) {}

    record Known(CrewId crewId) {}

    record Rows(List<CrewRow> rows, @Nullable String next) {}
}

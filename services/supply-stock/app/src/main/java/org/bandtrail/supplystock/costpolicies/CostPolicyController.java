package org.bandtrail.supplystock.costpolicies;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.ZoneOffset;
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
@Tag(name = "cost-policies", description = "How fasteners are valued, year by year")
final class CostPolicyController {
    private final Work work;
    private final Commands commands;
    private final CostPolicies policies;
    private final YearsBegun years;
    private final Clock clock;

    CostPolicyController(Work work, Commands commands, CostPolicies policies, YearsBegun years, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.policies = policies;
        this.years = years;
        this.clock = clock;
    }

    @PostMapping("/cost-policies")
    @Operation(summary = "Value fasteners so from a year on; refused once the year has entries")
    Known set(@RequestBody SetPolicy request, ActingPerson by) {
        boolean begun = years.begun(request.year());
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new CostPolicyCommand.Set(
                    CostPolicyId.FASTENERS,
                    request.year(),
                    request.method(),
                    request.reason(),
                    begun,
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(request.year(), request.method());
        });
    }

    @GetMapping("/cost-policies")
    @Operation(summary = "What holds this year and next, and every policy ever set")
    Rows list() {
        int year = clock.instant().atOffset(ZoneOffset.UTC).getYear();
        return new Rows(
                policies.all(),
                null,
                year,
                policies.of(year),
                policies.of(year + 1),
                years.begun(year),
                years.begun(year + 1));
    }

    record SetPolicy(UUID commandId, int year, CostMethod method, String reason) {}

    record Known(int year, CostMethod method) {}

    record Rows(
            List<CostPolicies.Row> rows,
            @Nullable String next,
            int year,
            CostMethod thisYear,
            CostMethod nextYear,
            boolean thisYearBegun,
            boolean nextYearBegun) {}
}

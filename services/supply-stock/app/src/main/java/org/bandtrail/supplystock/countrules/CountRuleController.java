package org.bandtrail.supplystock.countrules;

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

/** The rules of counting over HTTP. */
@RestController
@Tag(name = "count rules", description = "Tolerances, second person and intervals of counting")
final class CountRuleController {
    private final Work work;
    private final Commands commands;
    private final CountRulesInForce rules;
    private final Clock clock;

    CountRuleController(Work work, Commands commands, CountRulesInForce rules, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.rules = rules;
        this.clock = clock;
    }

    @PostMapping("/counts/rules")
    @Operation(summary = "Let these rules of counting hold from now on")
    Known set(@RequestBody SetRules request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new CountRuleCommand.Set(
                    CountRule.PROGRAMME,
                    request.rules(),
                    request.source(),
                    request.reason(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(request.rules());
        });
    }

    @GetMapping("/counts/rules")
    @Operation(summary = "All rules of counting there ever were, those that hold first")
    Rows list() {
        return new Rows(rules.all(), null);
    }

    record SetRules(UUID commandId, CountRules rules, String source, String reason) {}

    record Known(CountRules rules) {}

    record Rows(
            List<CountRulesInForce.Version> rows, @Nullable String next) {}
}

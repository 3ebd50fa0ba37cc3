package org.bandtrail.supplystock.budgets;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.grants.GrantId;
import org.bandtrail.supplystock.grants.Grants;
import org.bandtrail.supplystock.periods.Period;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Budgets over HTTP: set, change, drop, and beside each what was spent and committed. */
@RestController
@Tag(name = "budgets", description = "What may be spent on what")
final class BudgetController {
    private static final int MOST = 1_000;
    private final Work work;
    private final Commands commands;
    private final Budgets budgets;
    private final Standings standings;
    private final Grants grants;
    private final Clock clock;

    BudgetController(Work work, Commands commands, Budgets budgets, Standings standings, Grants grants, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.budgets = budgets;
        this.standings = standings;
        this.grants = grants;
        this.clock = clock;
    }

    @GetMapping("/budgets")
    @Operation(summary = "Budgets with actual and committed, by identity")
    Rows list(@RequestParam(defaultValue = "") String after, @RequestParam(defaultValue = "200") int limit) {
        int most = Math.clamp(limit, 1, MOST);
        List<BudgetRow> rows = budgets.after(after, most + 1);
        boolean more = rows.size() > most;
        List<BudgetRow> page = more ? rows.subList(0, most) : rows;
        return new Rows(standings.of(page, running()), more ? page.getLast().budgetId() : null);
    }

    @GetMapping("/budgets/{budgetId}")
    @Operation(summary = "One budget and what happened to it")
    Whole one(@PathVariable BudgetId budgetId) {
        BudgetRow budget = budgets.one(budgetId).orElseThrow(() -> new NoSuch("budget", budgetId));
        return new Whole(standings.of(List.of(budget), running()).getFirst(), budgets.history(budgetId));
    }

    @PostMapping("/budgets")
    @Operation(
            summary = "Set a budget; grant, site and kind may each be left out",
            description = "counts says what is spent: CHARGED or, if left out, CHARGED_AND_LOST")
    Known set(@RequestBody SetUp request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            if (request.grantId() != null) {
                grants.known(request.grantId());
            }
            BudgetPlan plan = new BudgetPlan(
                    request.name(),
                    request.grantId(),
                    request.siteId(),
                    request.kind(),
                    request.from(),
                    request.through(),
                    request.amount(),
                    Objects.requireNonNullElse(request.counts(), Counts.CHARGED_AND_LOST));
            commands.send(new BudgetCommand.SetUp(request.budgetId(), plan, by.id(), now()));
            return new Known(request.budgetId());
        });
    }

    @PostMapping("/budgets/{budgetId}/amount")
    @Operation(summary = "Give a budget another amount, with a reason")
    Known change(@PathVariable BudgetId budgetId, @RequestBody Change request, ActingPerson by) {
        return work.once(request.commandId(), new Asked(budgetId, request), Known.class, () -> {
            commands.send(new BudgetCommand.ChangeAmount(budgetId, request.amount(), request.reason(), by.id(), now()));
            return new Known(budgetId);
        });
    }

    @PostMapping("/budgets/{budgetId}/drop")
    @Operation(summary = "Let a budget count no longer, with a reason")
    Known drop(@PathVariable BudgetId budgetId, @RequestBody Drop request, ActingPerson by) {
        return work.once(request.commandId(), new Asked(budgetId, request), Known.class, () -> {
            commands.send(new BudgetCommand.Drop(budgetId, request.reason(), by.id(), now()));
            return new Known(budgetId);
        });
    }

    private YearMonth running() {
        return Period.monthOf(clock.instant());
    }

    private Occurred now() {
        return Occurred.at(clock.instant());
    }

    record SetUp(
            UUID commandId,
            BudgetId budgetId,
            String name,
            @Nullable GrantId grantId,
            @Nullable SiteId siteId,
            @Nullable MaterialKind kind,
            YearMonth from,
            YearMonth through,
            Money amount,
            @Nullable Counts counts) {}

    record Change(UUID commandId, Money amount, String reason) {}

    record Drop(UUID commandId, String reason) {}

    record Asked(BudgetId budgetId, Object body) {}

    record Known(BudgetId budgetId) {}

    record Whole(BudgetStanding standing, List<BudgetRow.Happened> history) {}

    record Rows(List<BudgetStanding> rows, @Nullable String next) {}
}

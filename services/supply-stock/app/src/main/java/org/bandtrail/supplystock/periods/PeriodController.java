package org.bandtrail.supplystock.periods;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.YearMonth;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Months over HTTP: can this one close, sign, close, reopen by two. */
@RestController
@Tag(name = "periods", description = "Months of the books, open or closed")
final class PeriodController {
    private static final int MOST = 120;
    private final Work work;
    private final Commands commands;
    private final Periods periods;
    private final Checks checks;
    private final Clock clock;

    PeriodController(Work work, Commands commands, Periods periods, Checks checks, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.periods = periods;
        this.checks = checks;
        this.clock = clock;
    }

    @GetMapping("/periods")
    @Operation(summary = "Months, the newest first, and which one to close next")
    Rows list(@RequestParam @Nullable YearMonth after, @RequestParam(defaultValue = "24") int limit) {
        YearMonth running = Period.monthOf(clock.instant());
        int most = Math.clamp(limit, 1, MOST);
        List<PeriodRow> rows = periods.page(running, after, most + 1);
        boolean more = rows.size() > most;
        List<PeriodRow> page = more ? rows.subList(0, most) : rows;
        return new Rows(page, more ? page.getLast().month() : null, running, periods.closedThrough(), periods.next());
    }

    @GetMapping("/periods/{month}")
    @Operation(summary = "Can this month close? Every check in words, every signature, what happened")
    PeriodRow.Whole one(@PathVariable YearMonth month) {
        YearMonth running = Period.monthOf(clock.instant());
        List<PeriodRow.Check> found = checks.withSignatures(month);
        String why = inTheWay(month, running, found);
        return new PeriodRow.Whole(periods.one(month, running), why == null, why, found, periods.history(month));
    }

    private @Nullable String inTheWay(YearMonth month, YearMonth running, List<PeriodRow.Check> found) {
        YearMonth last = periods.closedThrough();
        if (last != null && !month.isAfter(last)) {
            return "It is closed already.";
        }
        if (!month.isBefore(running)) {
            return "It has not ended.";
        }
        if (last != null && !month.equals(last.plusMonths(1))) {
            return "Month %s has to be closed first.".formatted(last.plusMonths(1));
        }
        long open = found.stream().filter(check -> !check.passes()).count();
        return open == 0
                ? null
                : open == 1 ? "One check is neither clean nor signed." : open + " checks are neither clean nor signed.";
    }

    @PostMapping("/periods/{month}/sign")
    @Operation(summary = "Answer for what one check finds now, with a reason")
    Done sign(@PathVariable YearMonth month, @RequestBody Sign request, ActingPerson by) {
        CheckFound found = checks.one(month, request.check());
        return work.once(request.commandId(), new Asked("sign", month, request), Done.class, () -> {
            commands.send(new PeriodCommand.SignCheck(BooksId.MAIN, month, found, request.reason(), by.id(), now()));
            return new Done(month, "signed");
        });
    }

    @PostMapping("/periods/{month}/close")
    @Operation(summary = "Close the month; refused before its end, out of order, or with an open check nobody signed")
    Done close(@PathVariable YearMonth month, @RequestBody Plain request, ActingPerson by) {
        List<CheckFound> found = checks.all(month);
        return work.once(request.commandId(), new Asked("close", month, request), Done.class, () -> {
            commands.send(new PeriodCommand.Close(
                    BooksId.MAIN, month, Period.monthOf(clock.instant()), found, by.id(), now()));
            return new Done(month, "closed");
        });
    }

    @PostMapping("/periods/{month}/reopening")
    @Operation(summary = "Ask that the last closed month be reopened, with a reason")
    Done ask(@PathVariable YearMonth month, @RequestBody Reasoned request, ActingPerson by) {
        return work.once(request.commandId(), new Asked("ask", month, request), Done.class, () -> {
            commands.send(new PeriodCommand.AskToReopen(BooksId.MAIN, month, request.reason(), by.id(), now()));
            return new Done(month, "reopening asked");
        });
    }

    @PostMapping("/periods/{month}/reopen")
    @Operation(summary = "Reopen the month as asked; refused to the person who asked")
    Done reopen(@PathVariable YearMonth month, @RequestBody Plain request, ActingPerson by) {
        return work.once(request.commandId(), new Asked("reopen", month, request), Done.class, () -> {
            commands.send(new PeriodCommand.Reopen(BooksId.MAIN, month, by.id(), now()));
            return new Done(month, "open");
        });
    }

    @PostMapping("/periods/{month}/reopening/drop")
    @Operation(summary = "Let the month stay closed, with a reason")
    Done drop(@PathVariable YearMonth month, @RequestBody Reasoned request, ActingPerson by) {
        return work.once(request.commandId(), new Asked("drop", month, request), Done.class, () -> {
            commands.send(new PeriodCommand.DropReopening(BooksId.MAIN, month, request.reason(), by.id(), now()));
            return new Done(month, "closed");
        });
    }

    private Occurred now() {
        return Occurred.at(clock.instant());
    }

    /** What was asked and of which month, because the month stands in the address and not in the body. */
    record Asked(String what, YearMonth month, Object body) {}

    record Plain(UUID commandId) {}

    record Reasoned(UUID commandId, String reason) {}

    record Sign(UUID commandId, String check, String reason) {}

    record Done(YearMonth month, String state) {}

    record Rows(
            List<PeriodRow> rows,
            @Nullable YearMonth next,
            YearMonth running,
            @Nullable YearMonth closedThrough,
            @Nullable YearMonth toClose) {}
}

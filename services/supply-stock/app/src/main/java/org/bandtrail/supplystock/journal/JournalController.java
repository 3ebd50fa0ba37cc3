package org.bandtrail.supplystock.journal;

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
import org.bandtrail.supplystock.periods.BooksId;
import org.bandtrail.supplystock.periods.Periods;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The journal of a month and the organisation's accounts, over HTTP. */
@RestController
@Tag(name = "journal", description = "Balanced debits and credits of a month on the organisation's accounts")
class JournalController {
    private static final MediaType XLSX =
            MediaType.parseMediaType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");
    private static final MediaType CSV = MediaType.parseMediaType("text/csv;charset=UTF-8");
    private final Work work;
    private final Commands commands;
    private final Charts charts;
    private final Postings postings;
    private final Periods periods;
    private final Clock clock;

    JournalController(Work work, Commands commands, Charts charts, Postings postings, Periods periods, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.charts = charts;
        this.postings = postings;
        this.periods = periods;
        this.clock = clock;
    }

    @GetMapping("/journal/accounts")
    @Operation(summary = "The organisation's accounts for ours, the newest mapping first")
    public Mappings accounts() {
        return new Mappings(charts.all(), null);
    }

    @PostMapping("/journal/accounts")
    @Operation(summary = "Map our accounts to the organisation's from a month on")
    public Mapped map(@RequestBody MapAccounts request, ActingPerson by) {
        return work.once(request.commandId(), request, Mapped.class, () -> {
            commands.send(new ChartCommand.MapAccounts(
                    BooksId.MAIN,
                    request.from(),
                    request.accounts(),
                    periods.closedThrough(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Mapped(request.from());
        });
    }

    @GetMapping("/journal/{month:\\d{4}-\\d{2}}")
    @Operation(summary = "The journal of a month, with what keeps it from being exported")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Journal journal(@PathVariable YearMonth month) {
        return Journal.of(month, periods.closed(month), postings.of(month), charts.of(month));
    }

    @GetMapping("/journal/{month:\\d{4}-\\d{2}}.csv")
    @Operation(summary = "The journal as CSV; refused if it does not balance or an account is missing")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public ResponseEntity<byte[]> csv(@PathVariable YearMonth month) {
        Journal journal = journal(month).exportable();
        return file(journal, CSV, ".csv", JournalFile.csv(journal));
    }

    @GetMapping("/journal/{month:\\d{4}-\\d{2}}.xlsx")
    @Operation(summary = "The journal as XLSX; refused if it does not balance or an account is missing")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public ResponseEntity<byte[]> xlsx(@PathVariable YearMonth month) {
        Journal journal = journal(month).exportable();
        return file(journal, XLSX, ".xlsx", JournalFile.xlsx(journal));
    }

    private static ResponseEntity<byte[]> file(Journal journal, MediaType type, String ending, byte[] content) {
        String name = "journal-" + journal.month() + (journal.closed() ? "" : "-preliminary") + ending;
        return ResponseEntity.ok()
                .contentType(type)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(content);
    }

    record MapAccounts(UUID commandId, YearMonth from, List<ChartAccount> accounts) {}

    record Mapped(YearMonth from) {}

    record Mappings(List<Charts.Version> rows, @Nullable String next) {}
}

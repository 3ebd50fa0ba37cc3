package org.bandtrail.supplystock.audits;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The audit and its findings over HTTP, and the wish to settle one. */
@RestController
@Tag(name = "audit", description = "The material law on the stored data, and where books and field disagree")
final class AuditController {
    private final Auditor auditor;
    private final Findings findings;
    private final Work work;
    private final Commands commands;
    private final Clock clock;
    private final TransactionTemplate oneMoment;

    AuditController(
            Auditor auditor,
            Findings findings,
            Work work,
            Commands commands,
            Clock clock,
            PlatformTransactionManager transactions) {
        this.auditor = auditor;
        this.findings = findings;
        this.work = work;
        this.commands = commands;
        this.clock = clock;
        this.oneMoment = new TransactionTemplate(transactions);
        this.oneMoment.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        this.oneMoment.setReadOnly(true);
    }

    @GetMapping("/audit")
    @Operation(
            summary = "Every law with both its sides, and every finding",
            description = "The sums are kept as the moves come. With recount=true every row is counted again, the laws are"
                    + " stated on what was counted, and each kept sum is compared with it; that takes some seconds for"
                    + " millions of moves.")
    Audit audit(@RequestParam(defaultValue = "false") boolean recount) {
        return Objects.requireNonNull(oneMoment.execute(status -> auditor.audit(clock.instant(), recount, findings.all())));
    }

    @GetMapping("/discrepancies")
    @Operation(summary = "Where books and field disagree, the oldest first")
    Rows discrepancies() {
        return new Rows(findings.all(), null);
    }

    @PostMapping("/discrepancies/settle")
    @Operation(summary = "Settle a place: what is missing is written off, what is short was found; needs a reason")
    Settled settle(@RequestBody Settle request, ActingPerson by) {
        return work.once(request.commandId(), request, Settled.class, () -> {
            Occurred now = Occurred.at(clock.instant());
            commands.send(
                    switch (request.material()) {
                        case "reel" ->
                            new ReelCommand.Settle(
                                    new ReelId(request.id()), request.place(), request.reason(), by.id(), now);
                        case "batch" ->
                            new BatchCommand.Settle(
                                    new BatchId(request.id()), request.place(), request.reason(), by.id(), now);
                        default ->
                            throw new IllegalArgumentException(
                                    "Material [%s] is neither reel nor batch.".formatted(request.material()));
                    });
            return new Settled(request.id(), request.place());
        });
    }

    record Rows(List<Finding> rows, @Nullable String next) {}

    record Settle(UUID commandId, String material, String id, Place place, String reason) {}

    record Settled(String id, Place place) {}
}

package org.bandtrail.supplystock.audits;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.Objects;
import org.bandtrail.supplystock.discrepancies.Findings;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The audit over HTTP, with what is open between books and field. */
@RestController
@Tag(name = "audit", description = "The material law on the stored data, and where books and field disagree")
final class AuditController {
    private final Auditor auditor;
    private final Findings findings;
    private final Clock clock;
    private final TransactionTemplate oneMoment;

    AuditController(Auditor auditor, Findings findings, Clock clock, PlatformTransactionManager transactions) {
        this.auditor = auditor;
        this.findings = findings;
        this.clock = clock;
        this.oneMoment = new TransactionTemplate(transactions);
        this.oneMoment.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        this.oneMoment.setReadOnly(true);
    }

    @GetMapping("/audit")
    @Operation(
            summary = "Every law with both its sides, and every finding",
            description =
                    "The sums are kept as the moves come. With recount=true every row is counted again, the laws are"
                            + " stated on what was counted, and each kept sum is compared with it; that takes some seconds for"
                            + " millions of moves.")
    Audit audit(@RequestParam(defaultValue = "false") boolean recount) {
        return Objects.requireNonNull(
                oneMoment.execute(status -> auditor.audit(clock.instant(), recount, findings.all())));
    }
}

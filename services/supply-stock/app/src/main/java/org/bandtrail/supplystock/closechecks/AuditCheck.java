package org.bandtrail.supplystock.closechecks;

import java.time.Clock;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import org.bandtrail.supplystock.audits.Auditor;
import org.bandtrail.supplystock.periods.CheckFound;
import org.bandtrail.supplystock.periods.CloseCheck;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Every law of the books holds on the stored data. */
@Component
class AuditCheck implements CloseCheck {
    private final Auditor auditor;
    private final Clock clock;
    private final TransactionTemplate oneMoment;

    AuditCheck(Auditor auditor, Clock clock, PlatformTransactionManager transactions) {
        this.auditor = auditor;
        this.clock = clock;
        this.oneMoment = new TransactionTemplate(transactions);
        this.oneMoment.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        this.oneMoment.setReadOnly(true);
    }

    @Override
    public String name() {
        return "audit";
    }

    @Override
    public int order() {
        return 50;
    }

    @Override
    public CheckFound look(YearMonth month) {
        List<String> broken = Objects.requireNonNull(
                oneMoment.execute(status -> auditor.audit(clock.instant(), false, List.of()).laws().stream()
                        .filter(law -> law.difference() != 0)
                        .map(law -> law.name() + " " + law.difference() + " " + law.unit())
                        .toList()));
        return CheckFound.of(
                name(),
                broken,
                "Every millimetre, every piece and every cent is accounted for.",
                "Laws of the books whose two sides differ: %d ("
                        + String.join("; ", broken).replace("%", "%%") + ").");
    }
}

package org.bandtrail.supplystock.closechecks;

import java.time.YearMonth;
import java.util.List;
import org.bandtrail.supplystock.periods.CheckFound;
import org.bandtrail.supplystock.periods.CloseCheck;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** No invoice that was issued by the end of the month waits for its match or an approval. */
@Component
class InvoicesCheck implements CloseCheck {
    private final JdbcClient jdbc;

    InvoicesCheck(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "invoices-waiting";
    }

    @Override
    public int order() {
        return 20;
    }

    @Override
    public CheckFound look(YearMonth month) {
        List<String> open = jdbc.sql("""
                        SELECT invoice_id || ' ' || state || ' ' || approved_minor FROM invoice
                        WHERE state NOT IN ('approved', 'withdrawn') AND issued_on < :end""")
                .param("end", month.plusMonths(1).atDay(1))
                .query(String.class)
                .list();
        return CheckFound.of(
                name(),
                open,
                "No invoice issued by the end of the month waits for a match.",
                "Invoices that wait for a match or an approval: %d.");
    }
}

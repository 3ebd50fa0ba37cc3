package org.bandtrail.supplystock.journal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the organisation's accounts. */
@Repository
class Charts {
    private final JdbcClient jdbc;

    Charts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A mapping and the month it begins in. */
    record Version(YearMonth from, String by, Instant at, List<ChartAccount> accounts) {}

    /** Every mapping, the newest first; there are few. */
    List<Version> all() {
        return jdbc.sql("SELECT * FROM chart_version ORDER BY from_month DESC")
                .query((row, number) -> {
                    LocalDate from = row.getObject("from_month", LocalDate.class);
                    return new Version(
                            YearMonth.from(from),
                            row.getString("by_person"),
                            row.getObject("at", OffsetDateTime.class).toInstant(),
                            accounts(from));
                })
                .list();
    }

    /** The accounts that hold in a month, by our name; none if no mapping has begun by then. */
    List<ChartAccount> of(YearMonth month) {
        return jdbc.sql("SELECT max(from_month) AS from_month FROM chart_version WHERE from_month <= ?")
                .param(month.atDay(1))
                .query((row, number) -> {
                    LocalDate from = row.getObject("from_month", LocalDate.class);
                    return from == null ? List.<ChartAccount>of() : accounts(from);
                })
                .single();
    }

    private List<ChartAccount> accounts(LocalDate from) {
        return jdbc.sql("SELECT ours, number, name FROM chart_account WHERE from_month = ? ORDER BY ours COLLATE \"C\"")
                .param(from)
                .query(ChartAccount.class)
                .list();
    }
}

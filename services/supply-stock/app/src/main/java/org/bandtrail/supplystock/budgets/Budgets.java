package org.bandtrail.supplystock.budgets;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of budgets. */
@Repository
class Budgets {
    private final JdbcClient jdbc;

    Budgets(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Budgets by identity, those after this one; empty text for the first page. */
    List<BudgetRow> after(String after, int limit) {
        return jdbc.sql("SELECT * FROM budget WHERE budget_id > ? ORDER BY budget_id LIMIT ?")
                .params(after, limit)
                .query(Budgets::row)
                .list();
    }

    /** One budget, empty if nobody set it. */
    Optional<BudgetRow> one(BudgetId budget) {
        return jdbc.sql("SELECT * FROM budget WHERE budget_id = ?")
                .param(budget.value())
                .query(Budgets::row)
                .optional();
    }

    /** What happened to a budget, the oldest first. */
    List<BudgetRow.Happened> history(BudgetId budget) {
        return jdbc.sql("SELECT * FROM budget_history WHERE budget_id = ? ORDER BY position")
                .param(budget.value())
                .query((row, number) -> new BudgetRow.Happened(
                        row.getString("what"),
                        row.getObject("amount_minor", Long.class),
                        row.getString("reason"),
                        row.getString("by_person"),
                        row.getObject("at", OffsetDateTime.class).toInstant()))
                .list();
    }

    private static BudgetRow row(ResultSet row, int number) throws SQLException {
        String kind = row.getString("kind");
        return new BudgetRow(
                row.getString("budget_id"),
                row.getString("name"),
                row.getString("grant_id"),
                row.getString("site_id"),
                kind == null ? null : MaterialKind.valueOf(kind),
                YearMonth.from(row.getObject("from_month", LocalDate.class)),
                YearMonth.from(row.getObject("through_month", LocalDate.class)),
                Money.of(row.getLong("amount_minor"), row.getString("currency")),
                Counts.valueOf(row.getString("counts")),
                row.getString("dropped"));
    }
}

package org.bandtrail.supplystock.budgets;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the budgets. They are few, so each event is a statement. */
@Component
final class BudgetProjection implements Projection {
    private final JdbcClient jdbc;

    BudgetProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "budget";
    }

    @Override
    public List<String> tables() {
        return List.of("budget", "budget_history");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(BudgetEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((BudgetEvent) stored.payload()) {
                case BudgetEvent.Planned set -> {
                    insert(set);
                    remember(stored, "set", set.plan().amount().minor(), null, set.by(), set.occurred());
                }
                case BudgetEvent.AmountChanged changed -> {
                    jdbc.sql("UPDATE budget SET amount_minor = ? WHERE budget_id = ?")
                            .params(changed.amount().minor(), changed.budgetId().value())
                            .update();
                    long minor = changed.amount().minor();
                    remember(stored, "changed", minor, changed.reason(), changed.by(), changed.occurred());
                }
                case BudgetEvent.Dropped dropped -> {
                    jdbc.sql("UPDATE budget SET dropped = ? WHERE budget_id = ?")
                            .params(dropped.reason(), dropped.budgetId().value())
                            .update();
                    remember(stored, "dropped", null, dropped.reason(), dropped.by(), dropped.occurred());
                }
            }
        }
    }

    private void insert(BudgetEvent.Planned set) {
        BudgetPlan plan = set.plan();
        jdbc.sql("""
                        INSERT INTO budget (budget_id, name, grant_id, site_id, kind, from_month, through_month,
                            amount_minor, currency, counts)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(set.budgetId().value())
                .param(plan.name().strip())
                .param(plan.grantId() == null ? null : plan.grantId().value())
                .param(plan.siteId() == null ? null : plan.siteId().value())
                .param(plan.kind() == null ? null : plan.kind().name())
                .param(plan.from().atDay(1))
                .param(plan.through().atDay(1))
                .param(plan.amount().minor())
                .param(plan.amount().currency())
                .param(plan.counts().name())
                .update();
    }

    private void remember(
            StoredEvent stored,
            String what,
            @Nullable Long minor,
            @Nullable String reason,
            PersonId by,
            Occurred occurred) {
        BudgetEvent event = (BudgetEvent) stored.payload();
        jdbc.sql("""
                        INSERT INTO budget_history (position, budget_id, what, amount_minor, reason, by_person, at)
                        VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(stored.position())
                .param(event.budgetId().value())
                .param(what)
                .param(minor)
                .param(reason)
                .param(by.value())
                .param(occurred.recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}

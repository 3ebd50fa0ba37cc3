package org.bandtrail.supplystock.costpolicies;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every policy that was ever set. */
@Component
final class CostPolicyProjection implements Projection {
    private final JdbcClient jdbc;

    CostPolicyProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "cost-policy";
    }

    @Override
    public List<String> tables() {
        return List.of("cost_policy");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(CostPolicyEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((CostPolicyEvent) stored.payload()) {
                case CostPolicyEvent.Set set -> insert(stored.position(), set);
            }
        }
    }

    private void insert(long position, CostPolicyEvent.Set set) {
        jdbc.sql("""
            INSERT INTO cost_policy (position, year, method, reason, by_person, set_at)
            VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING\
            """)
                .params(
                        position,
                        set.year(),
                        set.method().name(),
                        set.reason(),
                        set.by().value(),
                        set.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}

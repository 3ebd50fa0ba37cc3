package org.bandtrail.supplystock.journal;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the organisation's accounts as they hold from each month on. */
@Component
final class ChartProjection implements Projection {
    private final JdbcClient jdbc;

    ChartProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "chart";
    }

    @Override
    public List<String> tables() {
        return List.of("chart_version", "chart_account");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ChartEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((ChartEvent) stored.payload()) {
                case ChartEvent.Mapped mapped -> replace(mapped);
            }
        }
    }

    private void replace(ChartEvent.Mapped mapped) {
        LocalDate from = mapped.from().atDay(1);
        jdbc.sql("""
                        INSERT INTO chart_version (from_month, by_person, at) VALUES (?, ?, ?)
                        ON CONFLICT (from_month) DO UPDATE SET by_person = EXCLUDED.by_person, at = EXCLUDED.at""")
                .params(from, mapped.by().value(), mapped.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
        jdbc.sql("DELETE FROM chart_account WHERE from_month = ?").param(from).update();
        jdbc.sql("""
                        INSERT INTO chart_account (from_month, ours, number, name)
                        SELECT ?, * FROM unnest(?::varchar[], ?::varchar[], ?::text[])""")
                .params(
                        from,
                        mapped.accounts().stream().map(ChartAccount::ours).toArray(String[]::new),
                        mapped.accounts().stream()
                                .map(account -> account.number().strip())
                                .toArray(String[]::new),
                        mapped.accounts().stream()
                                .map(account -> account.name().strip())
                                .toArray(String[]::new))
                .update();
    }
}

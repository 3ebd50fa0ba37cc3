package org.bandtrail.supplystock.periods;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps which months are closed and who answers for what. A month has a handful of events, so each is a statement. */
@Component
final class PeriodProjection implements Projection {
    private final JdbcClient jdbc;

    PeriodProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "period";
    }

    @Override
    public List<String> tables() {
        return List.of("period_closing", "period_signature", "period_request", "period_history");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(PeriodEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((PeriodEvent) stored.payload()) {
                case PeriodEvent.CheckSigned signed -> signed(stored, signed);
                case PeriodEvent.Closed closed -> closed(stored, closed);
                case PeriodEvent.ReopeningAsked asked -> asked(stored, asked);
                case PeriodEvent.Reopened reopened -> reopened(stored, reopened);
                case PeriodEvent.ReopeningDropped dropped -> {
                    forget("period_request", dropped.month());
                    remember(
                            stored,
                            "reopening dropped",
                            dropped.month(),
                            dropped.reason(),
                            dropped.by(),
                            dropped.occurred());
                }
            }
        }
    }

    private void signed(StoredEvent stored, PeriodEvent.CheckSigned signed) {
        jdbc.sql("""
                        INSERT INTO period_signature (month, check_name, open_things, fingerprint, reason, signed_by, signed_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        ON CONFLICT (month, check_name) DO UPDATE
                        SET open_things = EXCLUDED.open_things, fingerprint = EXCLUDED.fingerprint,
                            reason = EXCLUDED.reason, signed_by = EXCLUDED.signed_by, signed_at = EXCLUDED.signed_at""")
                .params(
                        day(signed.month()),
                        signed.found().check(),
                        signed.found().open(),
                        signed.found().fingerprint(),
                        signed.reason(),
                        signed.by().value(),
                        at(signed.occurred()))
                .update();
        String detail = signed.found().check() + ": " + signed.reason();
        remember(stored, "signed", signed.month(), detail, signed.by(), signed.occurred());
    }

    private void closed(StoredEvent stored, PeriodEvent.Closed closed) {
        long signed =
                closed.checks().stream().filter(check -> !check.found().clean()).count();
        jdbc.sql("""
                        INSERT INTO period_closing (month, closed_at, closed_by, checks, signed) VALUES (?, ?, ?, ?, ?)
                        ON CONFLICT DO NOTHING""")
                .params(
                        day(closed.month()),
                        at(closed.occurred()),
                        closed.by().value(),
                        closed.checks().size(),
                        signed)
                .update();
        // A request to reopen an earlier month ends when that month is no longer the last closed one.
        jdbc.sql("DELETE FROM period_request").update();
        String detail = closed.checks().size() + " checks, " + signed + " of them signed";
        remember(stored, "closed", closed.month(), detail, closed.by(), closed.occurred());
    }

    private void asked(StoredEvent stored, PeriodEvent.ReopeningAsked asked) {
        jdbc.sql("""
                        INSERT INTO period_request (month, reason, asked_by, asked_at) VALUES (?, ?, ?, ?)
                        ON CONFLICT DO NOTHING""")
                .params(day(asked.month()), asked.reason(), asked.by().value(), at(asked.occurred()))
                .update();
        remember(stored, "reopening asked", asked.month(), asked.reason(), asked.by(), asked.occurred());
    }

    private void reopened(StoredEvent stored, PeriodEvent.Reopened reopened) {
        forget("period_closing", reopened.month());
        forget("period_request", reopened.month());
        forget("period_signature", reopened.month());
        String detail = reopened.reason() + ", as asked by " + reopened.askedBy();
        remember(stored, "reopened", reopened.month(), detail, reopened.by(), reopened.occurred());
    }

    private void forget(String table, YearMonth month) {
        jdbc.sql("DELETE FROM %s WHERE month = ?".formatted(table))
                .param(day(month))
                .update();
    }

    private void remember(
            StoredEvent stored, String what, YearMonth month, String detail, PersonId by, Occurred occurred) {
        jdbc.sql("""
                        INSERT INTO period_history (position, month, what, detail, by_person, at)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(stored.position(), day(month), what, detail, by.value(), at(occurred))
                .update();
    }

    private static LocalDate day(YearMonth month) {
        return month.atDay(1);
    }

    private static OffsetDateTime at(Occurred occurred) {
        return occurred.recorded().atOffset(ZoneOffset.UTC);
    }
}

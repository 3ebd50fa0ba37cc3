package org.bandtrail.supplystock.grants;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of grants and what was agreed before. Grants are few, so each event is a statement. */
@Component
final class GrantProjection implements Projection {
    private final JdbcClient jdbc;

    GrantProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "grant";
    }

    @Override
    public List<String> tables() {
        return List.of("funding_grant", "funding_grant_history");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(GrantEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((GrantEvent) stored.payload()) {
                case GrantEvent.Registered grant ->
                    write(stored, grant.grantId(), grant.terms(), null, grant.by(), grant.occurred());
                case GrantEvent.TermsChanged grant ->
                    write(stored, grant.grantId(), grant.terms(), grant.reason(), grant.by(), grant.occurred());
            }
        }
    }

    private void write(
            StoredEvent stored,
            GrantId grant,
            GrantTerms terms,
            @Nullable String reason,
            PersonId by,
            Occurred occurred) {
        jdbc.sql("""
                        INSERT INTO funding_grant (grant_id, name, amount_minor, currency, good_from, good_until)
                        VALUES (?, ?, ?, ?, ?, ?)
                        ON CONFLICT (grant_id) DO UPDATE
                        SET name = EXCLUDED.name, amount_minor = EXCLUDED.amount_minor,
                            good_from = EXCLUDED.good_from, good_until = EXCLUDED.good_until""")
                .params(
                        grant.value(),
                        terms.name().strip(),
                        terms.amount().minor(),
                        terms.amount().currency(),
                        terms.from(),
                        terms.until())
                .update();
        jdbc.sql("""
                        INSERT INTO funding_grant_history (position, grant_id, name, amount_minor, currency, good_from,
                            good_until, reason, by_person, at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(stored.position())
                .param(grant.value())
                .param(terms.name().strip())
                .param(terms.amount().minor())
                .param(terms.amount().currency())
                .param(terms.from())
                .param(terms.until())
                .param(reason)
                .param(by.value())
                .param(occurred.recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}

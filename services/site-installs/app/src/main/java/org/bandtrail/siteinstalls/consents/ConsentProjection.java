package org.bandtrail.siteinstalls.consents;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentAsked;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentDeclined;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentGiven;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentRenewed;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentWithdrawn;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps all consents. They are few, so each event is two statements. */
@Component
final class ConsentProjection implements Projection {
    private final JdbcClient jdbc;

    ConsentProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "consent";
    }

    @Override
    public List<String> tables() {
        return List.of("consent", "consent_step");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ConsentEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            long position = stored.position();
            switch ((ConsentEvent) stored.payload()) {
                case ConsentAsked asked -> {
                    asked(asked);
                    step(
                            position,
                            asked,
                            "asked",
                            asked.by(),
                            asked.when(),
                            asked.scope().words());
                }
                case ConsentGiven given -> {
                    given(given);
                    step(position, given, "given", given.by(), given.when(), given.how());
                }
                case ConsentDeclined declined -> {
                    update(declined, "state = 'declined', note = ?", declined.reason());
                    step(position, declined, "declined", declined.by(), declined.when(), declined.reason());
                }
                case ConsentRenewed renewed -> {
                    renewed(renewed);
                    step(position, renewed, "renewed", renewed.by(), renewed.when(), renewal(renewed));
                }
                case ConsentWithdrawn withdrawn -> {
                    withdrawn(withdrawn);
                    step(position, withdrawn, "withdrawn", withdrawn.by(), withdrawn.when(), withdrawn.reason());
                }
            }
        }
    }

    private static String renewal(ConsentRenewed renewed) {
        String was = renewed.before() == null ? "without an end" : "until " + renewed.before();
        String now = renewed.until() == null ? "without an end" : "until " + renewed.until();
        return "was %s, now %s. %s".formatted(was, now, renewed.how()).strip();
    }

    private void asked(ConsentAsked asked) {
        jdbc.sql("""
                        INSERT INTO consent (consent_id, site_id, state, activities, pests, area, contact_id, asked_at,
                            note)
                        VALUES (?, ?, 'asked', ?, ?, ?, ?, ?, '') ON CONFLICT DO NOTHING""")
                .param(asked.consentId().value())
                .param(asked.siteId().value())
                .param(activities(asked.scope()))
                .param(pests(asked.scope()))
                .param(asked.scope().area())
                .param(asked.contactId().value())
                .param(asked.when().happened().atOffset(ZoneOffset.UTC))
                .update();
    }

    private void renewed(ConsentRenewed renewed) {
        jdbc.sql("UPDATE consent SET valid_until = ?, note = ? WHERE consent_id = ?")
                .param(renewed.until())
                .param(renewed.how())
                .param(renewed.consentId().value())
                .update();
    }

    private void withdrawn(ConsentWithdrawn withdrawn) {
        jdbc.sql("UPDATE consent SET state = 'withdrawn', withdrawn_from = ?, note = ? WHERE consent_id = ?")
                .param(withdrawn.from())
                .param(withdrawn.reason())
                .param(withdrawn.consentId().value())
                .update();
    }

    private void given(ConsentGiven given) {
        jdbc.sql("""
                        INSERT INTO consent (consent_id, site_id, state, activities, pests, area, contact_id,
                            valid_from, valid_until, note)
                        VALUES (?, ?, 'given', ?, ?, ?, ?, ?, ?, ?)
                        ON CONFLICT (consent_id) DO UPDATE SET state = 'given', activities = EXCLUDED.activities,
                            pests = EXCLUDED.pests, area = EXCLUDED.area, contact_id = EXCLUDED.contact_id,
                            valid_from = EXCLUDED.valid_from, valid_until = EXCLUDED.valid_until,
                            note = EXCLUDED.note""")
                .param(given.consentId().value())
                .param(given.siteId().value())
                .param(activities(given.scope()))
                .param(pests(given.scope()))
                .param(given.scope().area())
                .param(given.contactId().value())
                .param(given.from())
                .param(given.until())
                .param(given.how())
                .update();
    }

    private void update(ConsentEvent event, String set, String note) {
        jdbc.sql("UPDATE consent SET " + set + " WHERE consent_id = ?")
                .param(note)
                .param(event.consentId().value())
                .update();
    }

    private void step(long position, ConsentEvent event, String what, PersonId by, Occurred when, String note) {
        jdbc.sql("""
                        INSERT INTO consent_step (position, consent_id, what, happened_at, by_person, note)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(position)
                .param(event.consentId().value())
                .param(what)
                .param(when.happened().atOffset(ZoneOffset.UTC))
                .param(by.value())
                .param(note)
                .update();
    }

    private static String[] activities(ConsentScope scope) {
        return scope.activities().stream().map(Enum::name).toArray(String[]::new);
    }

    private static String[] pests(ConsentScope scope) {
        return scope.pests().toArray(String[]::new);
    }
}

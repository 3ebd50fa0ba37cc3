package org.bandtrail.siteinstalls.sites;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteRegistered;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of sites. Sites are few, so each event is one statement. */
@Component
final class SiteProjection implements Projection {
    private final JdbcClient jdbc;

    SiteProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "site";
    }

    @Override
    public List<String> tables() {
        return List.of("site");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(SiteEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((SiteEvent) stored.payload()) {
                case SiteRegistered registered -> insert(registered);
            }
        }
    }

    private void insert(SiteRegistered registered) {
        Point point = registered.point();
        jdbc.sql("""
                        INSERT INTO site (site_id, name, latitude_e7, longitude_e7, access_notes, registered_at)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(registered.siteId().value())
                .param(registered.name())
                .param(point == null ? null : point.latitudeE7())
                .param(point == null ? null : point.longitudeE7())
                .param(registered.accessNotes())
                .param(registered.when().happened().atOffset(ZoneOffset.UTC))
                .update();
    }
}

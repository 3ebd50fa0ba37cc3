package org.bandtrail.siteinstalls.sites;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.boundaries.Boundary;
import org.bandtrail.siteinstalls.sites.SiteEvent.HazardsSet;
import org.bandtrail.siteinstalls.sites.SiteEvent.HoursSet;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteClosed;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteCorrected;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteOutlined;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteRegistered;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteReopened;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of sites. Sites are few, so each event is one or two statements. */
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
        return List.of("site", "site_step");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(SiteEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            apply(stored.position(), (SiteEvent) stored.payload());
        }
    }

    private void apply(long position, SiteEvent event) {
        switch (event) {
            case SiteRegistered it -> insert(it);
            case SiteCorrected it -> {
                correct(it);
                String was = SiteWords.details(it.was());
                step(position, it, "corrected", it.by(), it.when(), was, SiteWords.details(it.became()));
            }
            case SiteOutlined it -> {
                outline(it);
                String was = SiteWords.boundary(it.was());
                step(position, it, "boundary drawn", it.by(), it.when(), was, SiteWords.boundary(it.boundary()));
            }
            case HoursSet it -> {
                set(it, "hours = CAST(? AS jsonb)", SiteJson.write(it.hours()));
                String was = SiteWords.hours(it.was());
                step(position, it, "opening hours set", it.by(), it.when(), was, SiteWords.hours(it.hours()));
            }
            case HazardsSet it -> {
                set(it, "hazards = CAST(? AS jsonb)", SiteJson.write(it.hazards()));
                String was = SiteWords.hazards(it.was());
                step(position, it, "hazards set", it.by(), it.when(), was, SiteWords.hazards(it.hazards()));
            }
            case SiteClosed it -> {
                close(it);
                step(position, it, "closed", it.by(), it.when(), "", "from %s: %s".formatted(it.on(), it.reason()));
            }
            case SiteReopened it -> {
                set(it, "closed_on = NULL, closed_why = ?", "");
                step(position, it, "opened again", it.by(), it.when(), "", it.reason());
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

    private void correct(SiteCorrected corrected) {
        Point point = corrected.became().point();
        jdbc.sql("UPDATE site SET name = ?, latitude_e7 = ?, longitude_e7 = ?, access_notes = ? WHERE site_id = ?")
                .param(corrected.became().name())
                .param(point == null ? null : point.latitudeE7())
                .param(point == null ? null : point.longitudeE7())
                .param(corrected.became().accessNotes())
                .param(corrected.siteId().value())
                .update();
    }

    private void outline(SiteOutlined outlined) {
        Boundary boundary = outlined.boundary();
        Boundary.Box box = boundary.box();
        jdbc.sql("""
                        UPDATE site SET boundary = CAST(? AS jsonb), area_dm2 = ?, perimeter_mm = ?,
                            south_e7 = ?, west_e7 = ?, north_e7 = ?, east_e7 = ? WHERE site_id = ?""")
                .param(SiteJson.coordinates(boundary))
                .param(Math.max(1, boundary.areaDm2()))
                .param(Math.max(1, boundary.perimeterMm()))
                .param(box.southE7())
                .param(box.westE7())
                .param(box.northE7())
                .param(box.eastE7())
                .param(outlined.siteId().value())
                .update();
    }

    private void close(SiteClosed closed) {
        jdbc.sql("UPDATE site SET closed_on = ?, closed_why = ? WHERE site_id = ?")
                .param(closed.on())
                .param(closed.reason())
                .param(closed.siteId().value())
                .update();
    }

    private void set(SiteEvent event, String assignment, String value) {
        jdbc.sql("UPDATE site SET " + assignment + " WHERE site_id = ?")
                .param(value)
                .param(event.siteId().value())
                .update();
    }

    private void step(
            long position, SiteEvent event, String what, PersonId by, Occurred when, String was, String became) {
        jdbc.sql("""
                        INSERT INTO site_step (position, site_id, what, happened_at, by_person, was, became)
                        VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(position)
                .param(event.siteId().value())
                .param(what)
                .param(when.happened().atOffset(ZoneOffset.UTC))
                .param(by.value())
                .param(was)
                .param(became)
                .update();
    }
}

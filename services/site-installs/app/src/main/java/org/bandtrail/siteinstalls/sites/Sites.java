package org.bandtrail.siteinstalls.sites;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.hazards.HazardKinds;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of sites. */
@Repository
public class Sites {
    private static final String SELECT = """
            SELECT site.*,
                   (SELECT count(*) FROM tree WHERE tree.site_id = site.site_id) AS trees,
                   (SELECT count(*) FROM band WHERE band.site_id = site.site_id AND state = 'up') AS bands_up,
                   jsonb_array_length(hazards) AS hazard_count
            FROM site
            """;
    private final JdbcClient jdbc;
    private final HazardKinds kinds;

    Sites(JdbcClient jdbc, HazardKinds kinds) {
        this.jdbc = jdbc;
        this.kinds = kinds;
    }

    /** One page by identity. */
    public List<SiteView> page(@Nullable String after, int limit) {
        return jdbc.sql(SELECT + "WHERE site_id > ? ORDER BY site_id LIMIT ?")
                .params(after == null ? "" : after, limit)
                .query(Sites::row)
                .list();
    }

    /** Those of the sites that are registered. */
    public Set<SiteId> registered(Collection<SiteId> sites) {
        return new HashSet<>(jdbc.sql("SELECT site_id FROM site WHERE site_id = ANY (?)")
                .param(sites.stream().map(SiteId::value).toArray(String[]::new))
                .query((row, number) -> new SiteId(row.getString(1)))
                .list());
    }

    /** One site with all that is known, empty if it is not registered. */
    public Optional<SiteWhole> whole(SiteId siteId) {
        return jdbc.sql(SELECT + "WHERE site_id = ?")
                .param(siteId.value())
                .query(this::wholeRow)
                .optional();
    }

    /** When a crew may be at the site, empty if it is not registered. */
    public Optional<OpeningHours> hours(SiteId siteId) {
        return jdbc.sql("SELECT hours FROM site WHERE site_id = ?")
                .param(siteId.value())
                .query((row, number) -> SiteJson.hours(row.getString(1)))
                .optional();
    }

    /** First day of no new work at the site, empty while it is open or not registered. */
    public Optional<LocalDate> closedOn(SiteId siteId) {
        return jdbc.sql("SELECT closed_on FROM site WHERE site_id = ? AND closed_on IS NOT NULL")
                .param(siteId.value())
                .query(LocalDate.class)
                .optional();
    }

    /** All sites that have a place, for a map: coordinates of a polygon where there is a boundary. */
    List<SiteGeoJson.Feature> features() {
        return jdbc.sql("""
                        SELECT site_id, name, boundary, latitude_e7, longitude_e7 FROM site
                        WHERE boundary IS NOT NULL OR latitude_e7 IS NOT NULL ORDER BY site_id""")
                .query((row, number) -> SiteGeoJson.feature(
                        row.getString("site_id"),
                        row.getString("name"),
                        SiteJson.node(row.getString("boundary")),
                        degrees(row.getObject("latitude_e7", Integer.class)),
                        degrees(row.getObject("longitude_e7", Integer.class))))
                .list();
    }

    private SiteWhole wholeRow(ResultSet row, int number) throws SQLException {
        List<SiteWhole.HazardHere> hazards = SiteJson.hazards(row.getString("hazards")).stream()
                .map(hazard -> new SiteWhole.HazardHere(hazard, kinds.of(hazard.kind())))
                .toList();
        return new SiteWhole(
                row(row, number),
                row.getObject("registered_at", OffsetDateTime.class).toInstant(),
                SiteJson.node(row.getString("boundary")),
                row.getObject("area_dm2", Long.class),
                row.getObject("perimeter_mm", Long.class),
                SiteJson.hours(row.getString("hours")),
                hazards,
                row.getObject("closed_on", LocalDate.class),
                row.getString("closed_why"),
                steps(row.getString("site_id")));
    }

    private List<SiteWhole.Step> steps(String siteId) {
        return jdbc.sql("SELECT * FROM site_step WHERE site_id = ? ORDER BY happened_at DESC, position DESC")
                .param(siteId)
                .query((row, number) -> new SiteWhole.Step(
                        row.getString("what"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getString("by_person"),
                        row.getString("was"),
                        row.getString("became")))
                .list();
    }

    private static SiteView row(ResultSet row, int number) throws SQLException {
        return new SiteView(
                row.getString("site_id"),
                row.getString("name"),
                degrees(row.getObject("latitude_e7", Integer.class)),
                degrees(row.getObject("longitude_e7", Integer.class)),
                row.getString("access_notes"),
                row.getLong("trees"),
                row.getLong("bands_up"),
                row.getObject("area_dm2", Long.class),
                row.getLong("hazard_count"),
                row.getObject("closed_on", LocalDate.class));
    }

    private static @Nullable BigDecimal degrees(@Nullable Integer e7) {
        return e7 == null ? null : Point.degrees(e7);
    }
}

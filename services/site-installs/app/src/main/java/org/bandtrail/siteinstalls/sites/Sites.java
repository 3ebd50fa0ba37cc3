package org.bandtrail.siteinstalls.sites;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.SiteId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of sites. */
@Repository
public class Sites {
    private final JdbcClient jdbc;

    Sites(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** One page by identity. */
    public List<SiteView> page(@Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT site.*,
                               (SELECT count(*) FROM tree WHERE tree.site_id = site.site_id) AS trees,
                               (SELECT count(*) FROM band
                                WHERE band.site_id = site.site_id AND state = 'up') AS bands_up
                        FROM site WHERE site_id > ? ORDER BY site_id LIMIT ?""")
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

    private static SiteView row(ResultSet row, int number) throws SQLException {
        return new SiteView(
                row.getString("site_id"),
                row.getString("name"),
                degrees(row.getObject("latitude_e7", Integer.class)),
                degrees(row.getObject("longitude_e7", Integer.class)),
                row.getString("access_notes"),
                row.getLong("trees"),
                row.getLong("bands_up"));
    }

    private static @Nullable BigDecimal degrees(@Nullable Integer e7) {
        return e7 == null ? null : Point.degrees(e7);
    }
}

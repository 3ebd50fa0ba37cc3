package org.bandtrail.supplystock.siteshares;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.supplystock.grants.GrantId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads who pays for which site. */
@Repository
public class SiteShares {
    private final JdbcClient jdbc;

    SiteShares(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every version of every site, by site and month. Versions are few: a site has one or two a year. */
    public List<SiteShareRow> all() {
        return rows("", Integer.MAX_VALUE);
    }

    /** All shares, for splitting. */
    public Payers payers() {
        return new Payers(all());
    }

    /**
     * One page of versions, by site and month.
     *
     * @param after site and month of the last row of the page before, for example {@code MILL 2026-05}, or empty
     */
    List<SiteShareRow> rows(String after, int limit) {
        Map<String, SiteShareRow> rows = new LinkedHashMap<>();
        jdbc.sql("""
                        SELECT v.site_id, v.from_month, s.grant_id, s.permille
                        FROM (SELECT site_id, from_month FROM site_share_version
                              WHERE site_id || ' ' || to_char(from_month, 'YYYY-MM') > :after COLLATE "C"
                              ORDER BY site_id || ' ' || to_char(from_month, 'YYYY-MM') COLLATE "C" LIMIT :limit) v
                        LEFT JOIN site_share s USING (site_id, from_month)
                        ORDER BY v.site_id COLLATE "C", v.from_month, s.permille DESC, s.grant_id""").param("after", after).param("limit", limit).query(row -> {
            String site = row.getString(1);
            YearMonth from = YearMonth.from(row.getObject(2, LocalDate.class));
            SiteShareRow version =
                    rows.computeIfAbsent(site + " " + from, unused -> new SiteShareRow(site, from, new ArrayList<>()));
            if (row.getString(3) != null) {
                version.shares().add(new GrantShare(new GrantId(row.getString(3)), row.getInt(4)));
            }
        });
        return List.copyOf(rows.values());
    }
}

package org.bandtrail.supplystock.spend;

import java.time.YearMonth;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * What was lost without a site: missing and written down. What a person missed counts for a site where the person charged
 * just that one site in the month it posts to; where it was several or none, nobody knows which.
 */
@Repository
class LostCosts {
    private final JdbcClient jdbc;

    LostCosts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One smallest sum of what was lost.
     *
     * @param siteId empty where nobody knows
     * @param minor minor units of the currency
     */
    record Lost(String siteId, YearMonth month, MaterialKind kind, String currency, Outcome outcome, long minor) {}

    /** All sums within these months. */
    List<Lost> within(Months months) {
        return jdbc.sql("""
                        WITH only_site AS (
                            SELECT period, person_id, min(site_id) AS site_id FROM ledger_account
                            WHERE site_id <> '' AND person_id <> '' AND period BETWEEN :from AND :through
                            GROUP BY period, person_id HAVING count(DISTINCT site_id) = 1)
                        SELECT coalesce(CASE WHEN a.account = 'written-off' THEN s.site_id END, '') AS site_id, a.period,
                               a.kind, a.currency, a.account, sum(a.minor)::bigint AS minor
                        FROM ledger_account a LEFT JOIN only_site s ON s.period = a.period AND s.person_id = a.person_id
                        WHERE a.account IN ('written-off', 'written-down') AND a.currency <> ''
                          AND a.period BETWEEN :from AND :through
                        GROUP BY 1, 2, 3, 4, 5 ORDER BY 1, 2, 3, 4, 5""")
                .param("from", months.from())
                .param("through", months.through())
                .query((row, number) -> new Lost(
                        row.getString("site_id"),
                        YearMonth.parse(row.getString("period")),
                        MaterialKind.valueOf(row.getString("kind")),
                        row.getString("currency"),
                        row.getString("account").equals("written-off") ? Outcome.MISSING : Outcome.WRITTEN_DOWN,
                        row.getLong("minor")))
                .list();
    }
}

package org.bandtrail.benchmark;

import javax.sql.DataSource;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Fills the ledger with the moves of {@link FullDepot}, as SQL that writes the rows its projection writes: every move
 * with its value, the sums by account, place and day, and what is where. A reel of 50 m cost 36.00, so a metre is worth
 * 0.72.
 */
final class FullLedger {
    private static final String LINES = """
            INSERT INTO ledger_line (position, step, holding, id, material, kind, currency, what, adjusts, note, source, target,
                quantity, out_minor, in_minor, account, account_quantity, account_minor, site_id, tree_id, person_id, crew_id,
                by_person, happened_at, recorded_at, period)
            SELECT h.position, h.step, 'reel', h.id, b.material, b.kind, b.currency, h.what, false, h.note, h.source, h.target,
                   h.quantity, v.value, CASE WHEN h.account IS NULL THEN v.value ELSE 0 END, h.account,
                   CASE WHEN h.account IS NULL THEN 0 ELSE h.quantity END,
                   CASE WHEN h.account IS NULL THEN 0 ELSE v.value END,
                   CASE WHEN h.account IS NULL THEN '' ELSE split_part(h.account, ':', 2) END,
                   CASE WHEN h.target LIKE 'tree:%' THEN split_part(h.target, ':', 2)
                        WHEN h.source LIKE 'tree:%' THEN split_part(h.source, ':', 2) ELSE '' END,
                   h.by_person, '', h.by_person, h.happened_at, h.recorded_at,
                   to_char(h.happened_at AT TIME ZONE 'UTC', 'YYYY-MM')
            FROM reel_history h JOIN reel_balance b ON b.id = h.id
            CROSS JOIN LATERAL (SELECT CASE WHEN h.source LIKE 'tree:%' THEN 0 ELSE h.quantity * 72 / 1000 END AS value) v
            WHERE h.position >= 1000000000000""";

    private static final String HOLDINGS = """
            INSERT INTO ledger_holding (holding, id, material, kind, currency, origin)
            SELECT 'reel', id, material, kind, currency, 'supplier:' FROM reel_balance WHERE id LIKE 'BIG-R%'
            ON CONFLICT DO NOTHING""";

    private static final String THERE = """
            INSERT INTO ledger_place (holding, id, place, stock, quantity, value_minor)
            SELECT 'reel', id, place_kind || ':' || place_id, place_kind IN ('depot', 'crew'), quantity,
                   CASE WHEN place_kind IN ('depot', 'crew', 'supplier') THEN quantity * 72 / 1000 ELSE 0 END
            FROM reel_place WHERE id LIKE 'BIG-R%' ON CONFLICT DO NOTHING""";

    private static final String ACCOUNTS = """
            INSERT INTO ledger_account (period, account, site_id, tree_id, material, kind, currency, what, person_id, crew_id,
                quantity, minor)
            SELECT period, account, site_id, tree_id, material, kind, currency, what, person_id, crew_id,
                   sum(account_quantity), sum(account_minor)
            FROM ledger_line WHERE account IS NOT NULL GROUP BY 1, 2, 3, 4, 5, 6, 7, 8, 9, 10""";

    /** Both ends of every line; trees, bags and what is gone are summed by kind. */
    private static final String ENDS = """
            WITH ends AS (
                SELECT period, material, kind, currency, source AS place, -quantity AS quantity, -out_minor AS minor,
                       happened_at, recorded_at FROM ledger_line WHERE source IS NOT NULL
                UNION ALL
                SELECT period, material, kind, currency, target, quantity, in_minor, happened_at, recorded_at
                FROM ledger_line WHERE target IS NOT NULL),
            slots AS (
                SELECT period, material, kind, currency, quantity, minor, happened_at, recorded_at,
                       CASE WHEN split_part(place, ':', 1) IN ('tree', 'bag', 'disposed', 'slit')
                            THEN split_part(place, ':', 1) || ':' ELSE place END AS slot FROM ends)
            """;

    private static final String TRIAL = ENDS + """
            INSERT INTO ledger_trial (period, material, kind, currency, place, in_quantity, in_minor, out_quantity, out_minor,
                adjusted_quantity, adjusted_minor)
            SELECT period, material, kind, currency, slot, coalesce(sum(quantity) FILTER (WHERE quantity > 0), 0),
                   coalesce(sum(minor) FILTER (WHERE quantity > 0), 0), coalesce(-sum(quantity) FILTER (WHERE quantity < 0), 0),
                   coalesce(-sum(minor) FILTER (WHERE quantity < 0), 0), 0, 0
            FROM slots GROUP BY 1, 2, 3, 4, 5""";

    private static final String DAYS = ENDS + """
            INSERT INTO ledger_day (side, slot, material, kind, currency, happened_day, recorded_day, quantity, minor)
            SELECT 'place', slot, material, kind, currency, (happened_at AT TIME ZONE 'UTC')::date,
                   (recorded_at AT TIME ZONE 'UTC')::date, sum(quantity), sum(minor)
            FROM slots GROUP BY 1, 2, 3, 4, 5, 6, 7
            UNION ALL
            SELECT 'account', account, material, kind, currency, (happened_at AT TIME ZONE 'UTC')::date,
                   (recorded_at AT TIME ZONE 'UTC')::date, sum(account_quantity), sum(account_minor)
            FROM ledger_line WHERE account IS NOT NULL GROUP BY 1, 2, 3, 4, 5, 6, 7""";

    private final JdbcClient jdbc;

    FullLedger(ApplicationContext supplyStock) {
        this.jdbc = JdbcClient.create(supplyStock.getBean(DataSource.class));
    }

    /** Puts in all moves that are in the depot, once the depot is full, and adds the sums up. */
    void fill() {
        run(LINES);
        run(HOLDINGS);
        run(THERE);
        run("TRUNCATE ledger_account, ledger_trial, ledger_day");
        run(ACCOUNTS);
        run(TRIAL);
        run(DAYS);
        run("VACUUM ANALYZE");
    }

    private void run(String sql) {
        jdbc.sql(sql).update();
    }
}

package org.bandtrail.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import javax.sql.DataSource;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Fills the read models of supply-stock with a depot of many reels, as SQL that writes the rows the projections write:
 * each reel of 50 m is received, handed out, cut twenty times for trees, two of the pieces are taken down, and it comes
 * back with 30 m. That is 25 moves a reel. Positions lie far above those of real events. The events themselves are not
 * written, so these tables cannot be rebuilt.
 */
final class FullDepot {
    static final int MOVES_A_REEL = 25;
    static final int REELS_A_LOT = 200;
    private static final int TREES = 100_000;
    private static final String KEPT = "/db/supply-stock/V075__kept_sums.sql";
    private static final String ADDED_UP = "-- What is in the tables already is added up once.";

    private static final String HISTORY = """
            INSERT INTO reel_history (position, step, id, what, note, source, target, quantity, account, cost_minor, by_person,
                happened_at, recorded_at)
            SELECT 1000000000000 + r * 25 + m, 0, 'BIG-R' || to_char(r, 'FM000000'),
                   CASE WHEN m = 0 THEN 'received' WHEN m = 1 THEN 'handed out' WHEN m < 22 THEN 'fitted'
                        WHEN m < 24 THEN 'taken down' ELSE 'returned' END,
                   CASE WHEN m BETWEEN 2 AND 23 THEN 'band B-' || r || '-' || m END,
                   CASE WHEN m = 0 THEN 'supplier:' WHEN m = 1 THEN 'depot:BIG/A-' || r %% 400
                        WHEN m < 22 THEN 'crew:P-' || r %% 40 WHEN m < 24 THEN 'tree:T-' || (r * 7 + m - 20) %% %3$d
                        ELSE 'crew:P-' || r %% 40 END,
                   CASE WHEN m = 0 THEN 'depot:BIG/A-' || r %% 400 WHEN m = 1 THEN 'crew:P-' || r %% 40
                        WHEN m < 22 THEN 'tree:T-' || (r * 7 + m) %% %3$d WHEN m < 24 THEN 'bag:BAG-' || r %% 5000
                        ELSE 'depot:BIG' END,
                   CASE WHEN m < 2 THEN 50000 WHEN m < 24 THEN 1000 ELSE 30000 END,
                   CASE WHEN m BETWEEN 2 AND 21 THEN 'site:S-' || r %% 60 END,
                   CASE WHEN m BETWEEN 2 AND 21 THEN 72 ELSE 0 END,
                   'P-' || r %% 40, timestamptz '2026-01-05' + r * interval '1 minute' + m * interval '1 hour',
                   timestamptz '2026-01-05' + r * interval '1 minute' + m * interval '1 hour'
            FROM generate_series(%1$d, %2$d) r, generate_series(0, 24) m""";

    private static final String PLACES = """
            INSERT INTO reel_place (id, place_kind, place_id, quantity)
            SELECT id, split_part(place, ':', 1), split_part(place, ':', 2), sum(quantity)
            FROM (SELECT id, source AS place, -quantity AS quantity FROM reel_history
                  WHERE id BETWEEN 'BIG-R' || to_char(%1$d, 'FM000000') AND 'BIG-R' || to_char(%2$d, 'FM000000')
                  UNION ALL
                  SELECT id, target, quantity FROM reel_history
                  WHERE id BETWEEN 'BIG-R' || to_char(%1$d, 'FM000000') AND 'BIG-R' || to_char(%2$d, 'FM000000')) AS moved
            GROUP BY 1, 2, 3""";

    private static final String BALANCES = """
            INSERT INTO reel_balance (id, material, kind, bought, cost_minor, currency, received_at, received, in_depot, with_crew,
                on_tree, in_bag, disposed, written_off, missing, charged_minor, written_off_minor, last_holder, last_moved_at,
                position)
            SELECT 'BIG-R' || to_char(r, 'FM000000'), CASE WHEN r %% 5 = 0 THEN 'MESH-' ELSE 'TAPE-' END || r %% 12,
                   CASE WHEN r %% 5 = 0 THEN 'MESH' ELSE 'TAPE' END, 50000, 3600, 'USD',
                   timestamptz '2026-01-05' + r * interval '1 minute', 50000, 30000, 0, 18000, 2000, 0, 0, 0, 1440, 0,
                   'P-' || r %% 40, timestamptz '2026-01-06' + r * interval '1 minute', 1000000000000 + r * 25 + 24
            FROM generate_series(%1$d, %2$d) r""";

    private static final String LOTS = """
            INSERT INTO delivered_holding (holding, id, delivery_id, line, supplier_id, purchase_id, purchase_line, depot_id,
                material, kind, quantity, width_mm, lot, expires_on, condition, state, cost_minor, currency, delivered_on)
            SELECT 'reel', 'BIG-R' || to_char(r, 'FM000000'), 'BIG-D' || r / %3$d, 1, 'BIG-SUP', 'BIG-PO' || r / %3$d, 1, 'BIG',
                   CASE WHEN r %% 5 = 0 THEN 'MESH-' ELSE 'TAPE-' END || r %% 12,
                   CASE WHEN r %% 5 = 0 THEN 'MESH' ELSE 'TAPE' END, 50000, 127, 'LOT ' || r / %3$d, date '2028-03-31', 'SOUND',
                   'accepted', 3600, 'USD', date '2026-01-05'
            FROM generate_series(%1$d, %2$d) r""";

    private final JdbcClient jdbc;

    FullDepot(ApplicationContext supplyStock) {
        this.jdbc = JdbcClient.create(supplyStock.getBean(DataSource.class));
    }

    /** Adds reels with these numbers, both included, and adds the kept sums up anew. */
    void fill(int first, int last) throws IOException {
        run(HISTORY.formatted(first, last, TREES));
        run(PLACES.formatted(first, last));
        run(BALANCES.formatted(first, last));
        run(LOTS.formatted(first, last, REELS_A_LOT));
        run("""
                INSERT INTO tree_site SELECT 'T-' || t, 'S-' || t %% 60 FROM generate_series(0, %d) t
                ON CONFLICT DO NOTHING""".formatted(TREES - 1));
        addUp();
        run("VACUUM ANALYZE");
    }

    /** Takes the statements from the migration that adds up what is there already, so that they are tried at this size. */
    private void addUp() throws IOException {
        run(
                "TRUNCATE reel_flow, reel_paid, reel_sum, reel_at_place, batch_flow, batch_paid, batch_sum, batch_at_place");
        try (InputStream migration = FullDepot.class.getResourceAsStream(KEPT)) {
            if (migration == null) {
                throw new IllegalStateException("The migration [%s] is not on the class path.".formatted(KEPT));
            }
            String sql = new String(migration.readAllBytes(), StandardCharsets.UTF_8);
            for (String statement :
                    sql.substring(sql.indexOf(ADDED_UP) + ADDED_UP.length()).split(";")) {
                if (!statement.isBlank()) {
                    run(statement);
                }
            }
        }
    }

    private void run(String sql) {
        jdbc.sql(sql).update();
    }
}

package org.bandtrail.supplystock.holdings;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Keeps the sums over the tables of reels or of batches, page by page, so that nobody has to add up millions of rows to
 * ask where everything is. What the moves say (flow, paid) and what the balances say (sum) is summed apart, each read
 * back from its own rows, so that the audit may compare the two.
 *
 * <p>Material that was used before its receipt was entered is counted as UNKNOWN; at the receipt all it did so far is
 * taken out there and put in where it belongs.
 */
final class KeptSums {
    private final JdbcClient jdbc;
    private final String prefix;

    KeptSums(JdbcClient jdbc, String prefix) {
        this.jdbc = jdbc;
        this.prefix = prefix;
    }

    /** The tables, in an order in which they can be copied. */
    List<String> names() {
        return List.of(prefix + "_flow", prefix + "_paid", prefix + "_sum", prefix + "_at_place");
    }

    /** Of these reels or batches, those that the books know without their receipt. */
    String[] unreceived(String[] ids) {
        return jdbc.sql("SELECT id FROM %s_balance WHERE id = ANY (?) AND kind IS NULL".formatted(prefix))
                .param(ids)
                .query(String.class)
                .list()
                .toArray(String[]::new);
    }

    /** Takes the balances of these out of the sums (-1) or puts them in (1). */
    void balances(String[] ids, int sign) {
        jdbc.sql("""
                        INSERT INTO %1$s_sum AS s
                        SELECT coalesce(kind, 'UNKNOWN'), coalesce(currency, ''), :sign * count(*), :sign * sum(received),
                               :sign * sum(set_aside), :sign * sum(in_depot), :sign * sum(in_transit),
                               :sign * sum(in_vehicle), :sign * sum(with_crew), :sign * sum(on_tree), :sign * sum(in_bag),
                               :sign * sum(disposed), :sign * sum(slit), :sign * sum(written_off), :sign * sum(missing),
                               :sign * sum(cost_minor), :sign * sum(charged_minor), :sign * sum(written_off_minor),
                               :sign * sum(written_down_minor), :sign * sum(slit_minor)
                        FROM %1$s_balance WHERE id = ANY (:ids) GROUP BY 1, 2
                        ON CONFLICT (kind, currency) DO UPDATE SET
                            holdings = s.holdings + EXCLUDED.holdings, received = s.received + EXCLUDED.received,
                            set_aside = s.set_aside + EXCLUDED.set_aside, in_depot = s.in_depot + EXCLUDED.in_depot,
                            in_transit = s.in_transit + EXCLUDED.in_transit, in_vehicle = s.in_vehicle + EXCLUDED.in_vehicle,
                            with_crew = s.with_crew + EXCLUDED.with_crew, on_tree = s.on_tree + EXCLUDED.on_tree,
                            in_bag = s.in_bag + EXCLUDED.in_bag, disposed = s.disposed + EXCLUDED.disposed,
                            slit = s.slit + EXCLUDED.slit, written_off = s.written_off + EXCLUDED.written_off,
                            missing = s.missing + EXCLUDED.missing, cost_minor = s.cost_minor + EXCLUDED.cost_minor,
                            charged_minor = s.charged_minor + EXCLUDED.charged_minor,
                            written_off_minor = s.written_off_minor + EXCLUDED.written_off_minor,
                            written_down_minor = s.written_down_minor + EXCLUDED.written_down_minor,
                            slit_minor = s.slit_minor + EXCLUDED.slit_minor""".formatted(prefix)).param("sign", sign).param("ids", ids).update();
    }

    /** Puts the moves and charges of a page in, by what its rows in the history say. */
    void historyOfPage(long firstPosition, long lastPosition) {
        history("h.position BETWEEN :first AND :last", 1, firstPosition, lastPosition, new String[0]);
    }

    /** Takes all that these did so far out of the moves, the charges and the places (-1), or puts it in (1). */
    void everythingOf(String[] ids, int sign) {
        history("h.id = ANY (:ids)", sign, 0, 0, ids);
        jdbc.sql("""
                        INSERT INTO %1$s_at_place AS a
                        SELECT p.place_kind || ':' || p.place_id, coalesce(b.kind, 'UNKNOWN'), :sign * sum(p.quantity)
                        FROM %1$s_place p JOIN %1$s_balance b ON b.id = p.id WHERE p.id = ANY (:ids) GROUP BY 1, 2
                        ON CONFLICT (place, kind) DO UPDATE SET quantity = a.quantity + EXCLUDED.quantity""".formatted(prefix)).param("sign", sign).param("ids", ids).update();
    }

    private void history(String which, int sign, long first, long last, String[] ids) {
        jdbc.sql("""
                        WITH rows AS (
                            SELECT coalesce(b.kind, 'UNKNOWN') AS kind, coalesce(b.currency, '') AS currency, h.*
                            FROM %1$s_history h JOIN %1$s_balance b ON b.id = h.id WHERE %2$s),
                        flow AS (
                            INSERT INTO %1$s_flow AS f
                            SELECT kind, split_part(source, ':', 1), split_part(target, ':', 1), :sign * count(*),
                                   :sign * sum(quantity)
                            FROM rows WHERE source IS NOT NULL GROUP BY 1, 2, 3
                            ON CONFLICT (kind, source, target) DO UPDATE
                            SET moves = f.moves + EXCLUDED.moves, quantity = f.quantity + EXCLUDED.quantity)
                        INSERT INTO %1$s_paid AS p
                        SELECT currency, split_part(account, ':', 1), :sign * count(*), :sign * sum(cost_minor)
                        FROM rows WHERE account IS NOT NULL GROUP BY 1, 2
                        ON CONFLICT (currency, account) DO UPDATE
                        SET charges = p.charges + EXCLUDED.charges, cost_minor = p.cost_minor + EXCLUDED.cost_minor""".formatted(prefix, which))
                .param("sign", sign)
                .param("first", first)
                .param("last", last)
                .param("ids", ids)
                .update();
    }

    /** Puts in by how much the balance of each place changed; ids, places and quantities go together. */
    void places(String[] ids, String[] places, Long[] quantities) {
        jdbc.sql("""
                        INSERT INTO %1$s_at_place AS a
                        SELECT d.place, coalesce(b.kind, 'UNKNOWN'), sum(d.quantity)
                        FROM unnest(?::varchar[], ?::varchar[], ?::bigint[]) AS d (id, place, quantity)
                        JOIN %1$s_balance b ON b.id = d.id GROUP BY 1, 2
                        ON CONFLICT (place, kind) DO UPDATE SET quantity = a.quantity + EXCLUDED.quantity""".formatted(prefix)).params(ids, places, quantities).update();
    }
}

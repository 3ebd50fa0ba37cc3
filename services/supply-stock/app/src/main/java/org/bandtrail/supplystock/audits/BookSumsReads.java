package org.bandtrail.supplystock.audits;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the sums of the books: as they are kept, which is quick, or counted from every row, which is the proof. */
@Repository
class BookSumsReads {
    private static final String QUANTITIES = """
            sum(received), sum(set_aside), sum(in_depot), sum(in_transit), sum(in_vehicle), sum(with_crew), sum(on_tree),
            sum(in_bag), sum(disposed), sum(slit), sum(missing), sum(written_off)""";
    private static final String MONEY = """
            sum(cost_minor), sum(charged_minor), sum(written_off_minor), sum(written_down_minor), sum(slit_minor)""";

    private final JdbcClient jdbc;

    BookSumsReads(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The sums as they were kept page by page. */
    BookSums kept(String prefix) {
        return sums(
                "SELECT kind, source, target, quantity, moves FROM %s_flow".formatted(prefix),
                "SELECT currency, account, cost_minor FROM %s_paid".formatted(prefix),
                "SELECT kind, %s FROM %s_sum GROUP BY 1 HAVING sum(holdings) > 0".formatted(QUANTITIES, prefix),
                "SELECT currency, %s FROM %s_sum WHERE currency <> '' GROUP BY 1".formatted(MONEY, prefix));
    }

    /** The same sums from every move, charge and balance; reads all rows. */
    BookSums counted(String prefix) {
        return sums(
                """
                SELECT coalesce(b.kind, 'UNKNOWN'), split_part(h.source, ':', 1), split_part(h.target, ':', 1),
                       sum(h.quantity), count(*)
                FROM %1$s_history h JOIN %1$s_balance b ON b.id = h.id
                WHERE h.source IS NOT NULL GROUP BY 1, 2, 3""".formatted(prefix),
                """
                SELECT coalesce(b.currency, ''), split_part(h.account, ':', 1), sum(h.cost_minor)
                FROM %1$s_history h JOIN %1$s_balance b ON b.id = h.id
                WHERE h.account IS NOT NULL GROUP BY 1, 2""".formatted(prefix),
                "SELECT coalesce(kind, 'UNKNOWN'), %s FROM %s_balance GROUP BY 1".formatted(QUANTITIES, prefix),
                "SELECT currency, %s FROM %s_balance WHERE currency IS NOT NULL GROUP BY 1".formatted(MONEY, prefix));
    }

    /**
     * Each place's sum times a number made from the place's name, added up by kind of material: kept on the one side, from
     * the rows on the other. Reads each row once and groups nothing; a sum that slipped to another place shows all the same.
     */
    Map<String, Map<String, Long>> fingerprints(String prefix, boolean counted) {
        return paid((counted ? """
                        SELECT coalesce(b.kind, 'UNKNOWN'), 'places',
                               sum(p.quantity * mod(hashtext(p.place_kind || ':' || p.place_id), 1000003))
                        FROM %1$s_place p JOIN %1$s_balance b ON b.id = p.id GROUP BY 1""" : """
                        SELECT kind, 'places', sum(quantity * mod(hashtext(place), 1000003))
                        FROM %1$s_at_place GROUP BY 1""").formatted(prefix));
    }

    private BookSums sums(String flowSql, String paidSql, String thereSql, String moneySql) {
        AtomicLong moves = new AtomicLong();
        Map<String, Map<String, Long>> flow = new TreeMap<>();
        jdbc.sql(flowSql).query(row -> {
            String stretch = row.getString(2) + ">" + row.getString(3);
            of(flow, row.getString(1)).merge(stretch, row.getLong(4), Long::sum);
            moves.addAndGet(row.getLong(5));
        });
        return new BookSums(moves.get(), flow, paid(paidSql), there(thereSql), money(moneySql));
    }

    private Map<String, Map<String, Long>> paid(String sql) {
        Map<String, Map<String, Long>> paid = new TreeMap<>();
        jdbc.sql(sql).query(row -> {
            of(paid, row.getString(1)).merge(row.getString(2), row.getLong(3), Long::sum);
        });
        return paid;
    }

    private Map<String, Map<String, Long>> there(String sql) {
        Map<String, Map<String, Long>> there = new TreeMap<>();
        jdbc.sql(sql).query(row -> {
            Map<String, Long> stations = of(there, row.getString(1));
            stations.put("received", row.getLong(2));
            for (Station station : Station.values()) {
                stations.put(station.place(), row.getLong(station.ordinal() + 3));
            }
        });
        return there;
    }

    private Map<String, Map<String, Long>> money(String sql) {
        Map<String, Map<String, Long>> money = new TreeMap<>();
        jdbc.sql(sql).query(row -> {
            Map<String, Long> accounts = of(money, row.getString(1));
            accounts.put("cost", row.getLong(2));
            accounts.put("site", row.getLong(3));
            accounts.put("written-off", row.getLong(4));
            accounts.put("written-down", row.getLong(5));
            accounts.put("slit", row.getLong(6));
        });
        return money;
    }

    private static Map<String, Long> of(Map<String, Map<String, Long>> byKey, String key) {
        return byKey.computeIfAbsent(key, unused -> new HashMap<>());
    }
}

package org.bandtrail.supplystock.audits;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Reads both sides of each law. One side comes from the single moves, the other from the balances, so a mistake in
 * either would show; call it in one transaction of level repeatable read, so that both sides see the same moment.
 */
@Repository
class Laws {
    private static final Map<String, String> NAMES =
            Map.of("TAPE", "Tape", "MESH", "Mesh", "FASTENER", "Fasteners", "UNKNOWN", "Reels without a receipt");

    private final JdbcClient jdbc;

    Laws(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Law> all() {
        List<Law> laws = new ArrayList<>();
        laws.addAll(ofQuantity("reel", "coalesce(b.kind, 'UNKNOWN')", "mm"));
        laws.addAll(ofQuantity("batch", "'FASTENER'", "pieces"));
        laws.addAll(ofMoney());
        return laws;
    }

    private List<Law> ofQuantity(String prefix, String kind, String unit) {
        Map<String, Map<Station, Long>> cameIn = new TreeMap<>();
        Map<String, Map<Station, Long>> wentOut = new TreeMap<>();
        Map<String, Long> received = new TreeMap<>();
        jdbc.sql("""
                        SELECT %2$s, split_part(h.source, ':', 1), split_part(h.target, ':', 1), sum(h.quantity)
                        FROM %1$s_history h JOIN %1$s_balance b ON b.id = h.id
                        WHERE h.source IS NOT NULL GROUP BY 1, 2, 3""".formatted(prefix, kind)).query(row -> {
            String material = row.getString(1);
            long quantity = row.getLong(4);
            for (Station station : Station.values()) {
                if (station.place().equals(row.getString(2))) {
                    sums(wentOut, material).merge(station, quantity, Long::sum);
                }
                if (station.place().equals(row.getString(3))) {
                    sums(cameIn, material).merge(station, quantity, Long::sum);
                }
            }
            if (row.getString(2).equals("supplier")) {
                received.merge(material, quantity, Long::sum);
            }
            if (row.getString(3).equals("supplier")) {
                received.merge(material, -quantity, Long::sum); // what went back was never bought
            }
        });
        List<Law> laws = new ArrayList<>();
        balances(prefix, kind).forEach((material, there) -> {
            String name = NAMES.getOrDefault(material, material);
            laws.add(new Law(
                    name + ": everything",
                    "received = set aside + in depots + on the way + in vehicles + with crews + on trees + in waste bags"
                            + " + disposed + slit + missing + written off",
                    received.getOrDefault(material, 0L),
                    there.values().stream().mapToLong(Long::longValue).sum(),
                    unit));
            there.forEach((station, quantity) -> laws.add(new Law(
                    name + ": " + station.words(),
                    station.statement(),
                    sums(cameIn, material).getOrDefault(station, 0L),
                    sums(wentOut, material).getOrDefault(station, 0L) + quantity,
                    unit)));
        });
        return laws;
    }

    private static Map<Station, Long> sums(Map<String, Map<Station, Long>> byMaterial, String material) {
        return byMaterial.computeIfAbsent(material, unused -> new EnumMap<>(Station.class));
    }

    private Map<String, Map<Station, Long>> balances(String prefix, String kind) {
        Map<String, Map<Station, Long>> balances = new TreeMap<>();
        jdbc.sql("""
                        SELECT %2$s, sum(set_aside), sum(in_depot), sum(in_transit), sum(in_vehicle), sum(with_crew), sum(on_tree),
                               sum(in_bag), sum(disposed), sum(slit), sum(missing), sum(written_off)
                        FROM %1$s_balance b GROUP BY 1""".formatted(prefix, kind)).query(row -> {
            Map<Station, Long> there = new EnumMap<>(Station.class);
            for (Station station : Station.values()) {
                there.put(station, row.getLong(station.ordinal() + 2));
            }
            balances.put(row.getString(1), there);
        });
        return balances;
    }

    private List<Law> ofMoney() {
        return jdbc.sql("""
                        WITH book AS (
                            SELECT currency, cost_minor, charged_minor, written_off_minor + written_down_minor AS lost_minor,
                                   slit_minor FROM reel_balance
                            UNION ALL
                            SELECT currency, cost_minor, charged_minor, written_off_minor + written_down_minor, slit_minor
                            FROM batch_balance),
                        paid AS (
                            SELECT b.currency, h.cost_minor FROM reel_history h JOIN reel_balance b ON b.id = h.id
                            UNION ALL
                            SELECT b.currency, h.cost_minor FROM batch_history h JOIN batch_balance b ON b.id = h.id)
                        SELECT currency, sum(cost_minor),
                               sum(cost_minor - charged_minor - lost_minor - slit_minor)
                                 + coalesce((SELECT sum(p.cost_minor) FROM paid p WHERE p.currency = book.currency), 0)
                        FROM book WHERE currency IS NOT NULL GROUP BY currency ORDER BY currency""")
                .query((row, number) -> new Law(
                        "Money in " + row.getString(1),
                        "cost of all reels and batches = still in stock + charged to sites + written off or down + slit",
                        row.getLong(2),
                        row.getLong(3),
                        row.getString(1) + " minor units"))
                .list();
    }
}

package org.bandtrail.supplystock.reorderpoints;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bandtrail.kernel.MaterialKind;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what was used, per item and depot. */
@Repository
class UseRecords {
    private final JdbcClient jdbc;

    UseRecords(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * An item in a depot.
     *
     * @param onHand in the depot now, millimetres or pieces
     * @param firstHandedOut day of the first hand-out of the item from the depot, null if there was none
     */
    record ItemAtDepot(
            String material,
            MaterialKind kind,
            String depotId,
            long onHand,
            @Nullable LocalDate firstHandedOut) {
        /** Orders the rows and is the cursor of the next page; neither code has a blank in it. */
        String key() {
            return material + " " + depotId;
        }
    }

    /**
     * One page of the items that are or were in a depot, or that a work plan needs from there.
     *
     * @param after key of the last row of the page before, empty for the first page
     */
    List<ItemAtDepot> page(String after, int limit) {
        return jdbc.sql("""
                SELECT s.material, s.kind, s.depot_id, sum(s.quantity) AS on_hand,
                    (SELECT min(d.day) FROM use_depot d JOIN use_holding g USING (holding, id)
                      WHERE d.handed_out AND d.depot_id = s.depot_id AND g.material = s.material) AS first_handed_out
                FROM (SELECT h.material, h.kind, u.depot_id, u.quantity
                      FROM use_stock u JOIN use_holding h USING (holding, id)
                      UNION ALL SELECT material, kind, depot_id, 0 FROM planned_need) s
                WHERE (s.material || ' ' || s.depot_id) COLLATE "C" > :after
                GROUP BY s.material, s.kind, s.depot_id
                ORDER BY (s.material || ' ' || s.depot_id) COLLATE "C" LIMIT :limit""")
                .param("after", after)
                .param("limit", limit)
                .query((row, number) -> new ItemAtDepot(
                        row.getString("material"),
                        MaterialKind.valueOf(row.getString("kind")),
                        row.getString("depot_id"),
                        row.getLong("on_hand"),
                        row.getObject("first_handed_out", LocalDate.class)))
                .list();
    }

    /**
     * The last day on which anything was used anywhere. Later days are not days without use: the season is over or the
     * field's records have not arrived.
     */
    Optional<LocalDate> lastDayOfUse() {
        return jdbc.sql("SELECT max(day) FROM use_of_day")
                .query((row, number) -> Optional.ofNullable(row.getObject(1, LocalDate.class)))
                .single();
    }

    /**
     * The use of every item and depot by day. A day's use of a reel counts for the depot that had last handed it out or
     * received it by then; if none had, because facts came out of order, for the next one that did.
     *
     * @return by {@link ItemAtDepot#key}, millimetres or pieces by day; days without use are absent
     */
    Map<String, Map<LocalDate, Long>> useByDay(LocalDate first, LocalDate last) {
        Map<String, Map<LocalDate, Long>> uses = new TreeMap<>();
        jdbc.sql("""
                SELECT h.material || ' ' || behind.depot_id AS key, u.day, sum(u.quantity) AS quantity
                FROM use_of_day u
                JOIN use_holding h USING (holding, id)
                CROSS JOIN LATERAL (
                    SELECT d.depot_id FROM use_depot d
                    WHERE d.holding = u.holding AND d.id = u.id
                    ORDER BY d.day > u.day, abs(d.day - u.day), d.handed_out DESC, d.depot_id LIMIT 1) AS behind
                WHERE u.day BETWEEN :first AND :last
                GROUP BY 1, 2""").param("first", first).param("last", last).query(row -> {
            uses.computeIfAbsent(row.getString("key"), unused -> new TreeMap<>())
                    .put(row.getObject("day", LocalDate.class), row.getLong("quantity"));
        });
        return uses;
    }
}

package org.bandtrail.supplystock.custody;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** How kits were settled, one by one and summed up by person. */
@Repository
public class SettlementReads {
    private final JdbcClient jdbc;

    SettlementReads(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The settlement of a kit: its reels and batches, and how it came about. */
    public KitSettled kit(String kitId) {
        Settling settling = Settling.of(new CustodyTables(jdbc).stepsOf(List.of(kitId)));
        return KitSettled.of(kitId, settling);
    }

    /** Sums of all kits handed out to a person from a moment on and before another, by person, material and unit. */
    List<PersonSettled> people(@Nullable String person, Instant from, Instant to) {
        return jdbc.sql("""
            SELECT l.person_id, coalesce(r.material, b.material) AS material,
                   coalesce(r.kind, b.kind) AS kind, l.holding,
                   sum(l.handed_out) AS handed_out, sum(l.fitted) AS fitted, sum(l.returned) AS returned,
                   sum(l.scrapped) AS scrapped, sum(l.missing) AS missing, sum(l.settled) AS settled,
                   sum(l.elsewhere) AS elsewhere, sum(l.still_out) AS still_out,
                   count(DISTINCT l.kit_id) AS kits
            FROM kit_line_settled l
            JOIN (SELECT kit_id, person_id, min(happened_at) AS handed_out_at FROM custody_step
                   WHERE kit_id IS NOT NULL GROUP BY kit_id, person_id) k
                 ON k.kit_id = l.kit_id AND k.person_id = l.person_id
            LEFT JOIN reel_balance r ON l.holding = 'reel' AND r.id = l.id
            LEFT JOIN batch_balance b ON l.holding = 'batch' AND b.id = l.id
            WHERE (:person::varchar IS NULL OR l.person_id = :person)
              AND k.handed_out_at >= :from AND k.handed_out_at < :to
            GROUP BY 1, 2, 3, 4 ORDER BY 1, 2\
            """)
                .param("person", person)
                .param("from", from.atOffset(ZoneOffset.UTC))
                .param("to", to.atOffset(ZoneOffset.UTC))
                .query((row, number) -> new PersonSettled(
                        row.getString("person_id"),
                        row.getString("material"),
                        row.getString("kind"),
                        row.getString("holding").equals("reel") ? "mm" : "pieces",
                        row.getLong("kits"),
                        new Settlement(
                                row.getLong("handed_out"),
                                row.getLong("fitted"),
                                row.getLong("returned"),
                                row.getLong("scrapped"),
                                row.getLong("missing"),
                                row.getLong("settled"),
                                row.getLong("elsewhere"),
                                row.getLong("still_out"))))
                .list();
    }

    static CustodyStep step(ResultSet row, int number) throws SQLException {
        return new CustodyStep(
                row.getLong("position"),
                row.getInt("step"),
                new CustodyStep.Held(row.getString("holding"), row.getString("id"), row.getString("person_id")),
                Station.of(row.getString("source")),
                Station.of(row.getString("target")),
                row.getLong("quantity"),
                row.getString("place"),
                row.getString("what"),
                row.getString("kit_id"),
                row.getBoolean("measured"),
                CustodyReads.moment(row, "happened_at"),
                CustodyReads.moment(row, "recorded_at"));
    }
}

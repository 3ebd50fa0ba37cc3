package org.bandtrail.supplystock.custody;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is in people's care, now or at any moment, and how kits were settled. */
@Repository
public class CustodyReads {
    private final JdbcClient jdbc;

    CustodyReads(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of what people had in their care, by person, then reel or batch.
     *
     * @param people only these people, or everybody if empty
     * @param at as it was at this moment
     * @param knownAt as the books knew it at this moment
     * @param after key of the last row of the page before, empty for the first page
     */
    List<CustodyRow> page(List<String> people, Instant at, Instant knownAt, String after, int limit) {
        return jdbc.sql("""
                        SELECT c.*, coalesce(r.material, b.material) AS material, coalesce(r.kind, b.kind) AS kind
                        FROM (SELECT s.person_id, s.holding, s.id,
                                  sum(CASE WHEN s.target = 'with-person' THEN s.quantity ELSE 0 END
                                    - CASE WHEN s.source = 'with-person' THEN s.quantity ELSE 0 END) AS with_person,
                                  sum(CASE WHEN s.target = 'missing' THEN s.quantity ELSE 0 END
                                    - CASE WHEN s.source = 'missing' THEN s.quantity ELSE 0 END) AS missing,
                                  max(s.happened_at) FILTER (WHERE s.kit_id IS NOT NULL) AS handed_out_at,
                                  (array_agg(s.kit_id ORDER BY s.happened_at DESC, s.position DESC)
                                     FILTER (WHERE s.kit_id IS NOT NULL))[1] AS kit_id,
                                  max(s.happened_at) AS moved_at
                              FROM custody_step s
                              WHERE (cardinality(:people::varchar[]) = 0 OR s.person_id = ANY (:people))
                                AND s.happened_at <= :at AND s.recorded_at <= :knownAt
                                AND (s.person_id || ' ' || s.holding || ' ' || s.id) COLLATE "C" > :after
                              GROUP BY s.person_id, s.holding, s.id) c
                        LEFT JOIN reel_balance r ON c.holding = 'reel' AND r.id = c.id
                        LEFT JOIN batch_balance b ON c.holding = 'batch' AND b.id = c.id
                        WHERE c.with_person <> 0 OR c.missing <> 0
                        ORDER BY (c.person_id || ' ' || c.holding || ' ' || c.id) COLLATE "C" LIMIT :limit""")
                .param("people", people.toArray(String[]::new))
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("knownAt", knownAt.atOffset(ZoneOffset.UTC))
                .param("after", after)
                .param("limit", limit)
                .query((row, number) -> new CustodyRow(
                        row.getString("person_id"),
                        row.getString("holding"),
                        row.getString("id"),
                        row.getString("material"),
                        row.getString("kind"),
                        row.getLong("with_person"),
                        row.getLong("missing"),
                        row.getString("kit_id"),
                        instant(row, "handed_out_at"),
                        moment(row, "moved_at")))
                .list();
    }

    /** Who was in a crew at a moment, as the books knew it at another; nobody if the crew was not formed by then. */
    List<String> peopleOf(String crew, Instant at, Instant knownAt) {
        return jdbc.sql("""
                        SELECT people FROM custody_crew
                        WHERE crew_id = ? AND happened_at <= ? AND recorded_at <= ?
                        ORDER BY happened_at DESC, position DESC LIMIT 1""")
                .params(crew, at.atOffset(ZoneOffset.UTC), knownAt.atOffset(ZoneOffset.UTC))
                .query((row, number) -> List.of((String[]) row.getArray(1).getArray()))
                .optional()
                .orElse(List.of());
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
                        GROUP BY 1, 2, 3, 4 ORDER BY 1, 2""")
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
                moment(row, "happened_at"),
                moment(row, "recorded_at"));
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }
}

package org.bandtrail.supplystock.discrepancies;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bandtrail.supplystock.causes.LabelSlip;
import org.bandtrail.supplystock.causes.Suspect;
import org.bandtrail.supplystock.causes.Told;
import org.bandtrail.supplystock.holdings.Place;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads what may explain open questions: their reels or batches, those one sign away, and those the same people had about
 * that time. One page of questions takes a handful of statements, however long it is.
 */
final class Evidence {
    /** Of one thing the latest moves; older ones explain nothing that is open now (common practice, no source). */
    private static final int MOVES = 300;

    private static final int OF_ONE_PERSON = 40;
    private final JdbcClient jdbc;
    private final String prefix;

    /** @param prefix {@code reel} or {@code batch} */
    Evidence(JdbcClient jdbc, String prefix) {
        this.jdbc = jdbc;
        this.prefix = prefix;
    }

    /** Identities in the books that are one sign away from any of these. */
    Set<String> oneApart(Collection<String> ids) {
        String[] variants = ids.stream()
                .flatMap(id -> LabelSlip.oneApartFrom(id).stream())
                .distinct()
                .toArray(String[]::new);
        return new LinkedHashSet<>(jdbc.sql("SELECT id FROM %s_balance WHERE id = ANY(?) ORDER BY id".formatted(prefix))
                .param(variants)
                .query(String.class)
                .list());
    }

    /** What the person of each question had when it arose, from two weeks before; by person. */
    Map<String, Set<String>> had(List<OpenQuestion> questions) {
        Map<String, Set<String>> had = new HashMap<>();
        jdbc.sql("""
                        SELECT DISTINCT q.person, h.id
                        FROM unnest(?::varchar[], ?::timestamptz[]) AS q (person, since)
                        CROSS JOIN LATERAL (
                            SELECT p.id FROM (
                                SELECT t.id FROM %1$s_place t WHERE t.place_kind IN ('crew', 'missing')
                                   AND t.place_id = q.person AND t.quantity <> 0
                                UNION SELECT g.id FROM %1$s_place g WHERE g.place_kind IN ('crew', 'missing')
                                   AND g.place_id = q.person AND g.quantity = 0) AS p
                            JOIN %1$s_balance b ON b.id = p.id
                            WHERE b.last_moved_at >= q.since - interval '14 days'
                            ORDER BY b.last_moved_at, p.id LIMIT %2$d) AS h""".formatted(prefix, OF_ONE_PERSON))
                .params(
                        questions.stream()
                                .map(question -> question.place().id())
                                .toArray(String[]::new),
                        questions.stream()
                                .map(question -> question.finding().since().toString())
                                .toArray(String[]::new))
                .query(row -> {
                    had.computeIfAbsent(row.getString(1), unused -> new LinkedHashSet<>())
                            .add(row.getString(2));
                });
        return had;
    }

    /** These reels or batches with their balances and latest moves. */
    Map<String, Suspect> suspects(Collection<String> ids) {
        String[] wanted = ids.toArray(String[]::new);
        Map<String, Map<Place, Long>> balances = new HashMap<>();
        jdbc.sql(
                        "SELECT id, place_kind || ':' || place_id AS place, quantity FROM %s_place WHERE id = ANY(?) AND quantity <> 0"
                                .formatted(prefix))
                .param(wanted)
                .query(row -> {
                    balances.computeIfAbsent(row.getString("id"), unused -> new TreeMap<>())
                            .put(Place.parse(row.getString("place")), row.getLong("quantity"));
                });
        Map<String, List<Told>> told = told(wanted);
        Map<String, Suspect> suspects = new TreeMap<>();
        jdbc.sql("SELECT id, kind FROM %s_balance WHERE id = ANY(?)".formatted(prefix))
                .param(wanted)
                .query(row -> {
                    String id = row.getString("id");
                    suspects.put(
                            id,
                            new Suspect(
                                    id,
                                    row.getString("kind"),
                                    balances.getOrDefault(id, Map.of()),
                                    told.getOrDefault(id, List.of())));
                });
        return suspects;
    }

    private Map<String, List<Told>> told(String[] ids) {
        Map<String, List<Told>> told = new HashMap<>();
        jdbc.sql("""
                        SELECT h.*, b.kind FROM unnest(?::varchar[]) AS w (id)
                        JOIN %1$s_balance b ON b.id = w.id
                        CROSS JOIN LATERAL (
                            SELECT * FROM %1$s_history m WHERE m.id = w.id AND m.source IS NOT NULL
                            ORDER BY m.position DESC, m.step DESC LIMIT %2$d) AS h
                        ORDER BY h.position, h.step""".formatted(prefix, MOVES)).param(ids).query(row -> {
            told.computeIfAbsent(row.getString("id"), unused -> new java.util.ArrayList<>())
                    .add(move(row));
        });
        return told;
    }

    private static Told move(ResultSet row) throws SQLException {
        return new Told(
                row.getLong("position"),
                row.getString("id"),
                row.getString("kind"),
                row.getString("what"),
                row.getString("note"),
                Place.parse(row.getString("source")),
                Place.parse(row.getString("target")),
                row.getLong("quantity"),
                row.getObject("happened_at", OffsetDateTime.class)
                        .withOffsetSameInstant(ZoneOffset.UTC)
                        .toInstant(),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant());
    }
}

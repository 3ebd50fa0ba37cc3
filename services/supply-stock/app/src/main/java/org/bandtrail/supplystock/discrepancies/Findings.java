package org.bandtrail.supplystock.discrepancies;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads where books and field disagree: anything missing, and every balance below zero. */
@Repository
public class Findings {
    private static final String OPEN = """
            SELECT '%1$s' AS material, p.id, p.place_kind || ':' || p.place_id AS place, p.quantity, b.last_holder,
                   b.bought, b.cost_minor, b.currency,
                   (SELECT max(h.happened_at) FROM %1$s_history h
                     WHERE h.id = p.id AND p.place_kind || ':' || p.place_id IN (h.source, h.target)) AS since
            FROM %1$s_place p JOIN %1$s_balance b ON b.id = p.id
            WHERE ((p.place_kind = 'missing' AND p.quantity <> 0)
                OR (p.place_kind NOT IN ('supplier', 'slit') AND p.quantity < 0))
            """;

    private final JdbcClient jdbc;

    Findings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All findings, the oldest first; they are few, because each is somebody's open question. */
    public List<Finding> all() {
        return open().stream().map(OpenQuestion::finding).toList();
    }

    /** All findings with what the books know of each, the oldest first. */
    List<OpenQuestion> open() {
        return jdbc.sql(OPEN.formatted("reel") + " UNION ALL " + OPEN.formatted("batch")
                        + " ORDER BY since, material, id")
                .query(Findings::question)
                .list();
    }

    /** The open question at this place, empty if books and field agree there. */
    Optional<OpenQuestion> at(String material, String id, Place place) {
        return jdbc.sql(OPEN.formatted(material.equals("batch") ? "batch" : "reel")
                        + " AND p.id = ? AND p.place_kind = ? AND p.place_id = ?")
                .params(id, place.kind().word(), place.id())
                .query(Findings::question)
                .optional();
    }

    private static OpenQuestion question(ResultSet row, int number) throws SQLException {
        return new OpenQuestion(
                finding(
                        row.getString("material"),
                        row.getString("id"),
                        Place.parse(row.getString("place")),
                        row.getLong("quantity"),
                        row.getString("last_holder"),
                        row.getObject("since", OffsetDateTime.class)),
                row.getLong("bought"),
                row.getLong("cost_minor"),
                row.getString("currency"),
                row.getString("last_holder"));
    }

    private static Finding finding(
            String material, String id, Place place, long quantity, @Nullable String lastHolder, OffsetDateTime since) {
        boolean reel = material.equals("reel");
        Object amount = reel ? Length.ofMm(Math.abs(quantity)) : Pieces.of(Math.abs(quantity));
        boolean person = place.kind() == PlaceKind.CREW || place.kind() == PlaceKind.MISSING;
        String thing = (reel ? "reel " : "batch ") + id;
        return new Finding(
                what(place, quantity),
                material,
                id,
                place.toString(),
                person ? place.id() : lastHolder,
                quantity,
                reel ? "mm" : "pieces",
                since.toInstant(),
                sentence(place, quantity, amount, thing));
    }

    private static String what(Place place, long quantity) {
        return place.kind() != PlaceKind.MISSING
                ? "used more than the books knew"
                : quantity > 0 ? "missing" : "surplus";
    }

    private static String sentence(Place place, long quantity, Object amount, String thing) {
        return switch (place.kind()) {
            case MISSING ->
                quantity > 0
                        ? "The books expected %s more of %s back from %s.".formatted(amount, thing, place.id())
                        : "%s more of %s came back from %s than the books knew.".formatted(amount, thing, place.id());
            case CREW -> "%s used %s more of %s than the books had handed out.".formatted(place.id(), amount, thing);
            case TREE ->
                "%s more of %s came off tree %s than the books had on it.".formatted(amount, thing, place.id());
            case BAG -> "%s more of %s left bag %s than the books had in it.".formatted(amount, thing, place.id());
            default -> "%s of %s does not add up at %s.".formatted(amount, thing, place);
        };
    }
}

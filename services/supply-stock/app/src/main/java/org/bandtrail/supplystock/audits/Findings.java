package org.bandtrail.supplystock.audits;

import java.time.OffsetDateTime;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads where books and field disagree: anything missing, and every balance below zero. */
@Repository
class Findings {
    private final JdbcClient jdbc;

    Findings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All findings, the oldest first; they are few, because each is somebody's open question. */
    List<Finding> all() {
        return jdbc.sql("""
                        SELECT 'reel' AS material, p.id, p.place_kind || ':' || p.place_id AS place, p.quantity, b.last_holder,
                               (SELECT max(h.happened_at) FROM reel_history h
                                 WHERE h.id = p.id AND p.place_kind || ':' || p.place_id IN (h.source, h.target)) AS since
                        FROM reel_place p JOIN reel_balance b ON b.id = p.id
                        WHERE (p.place_kind = 'missing' AND p.quantity <> 0)
                           OR (p.place_kind NOT IN ('supplier', 'slit') AND p.quantity < 0)
                        UNION ALL
                        SELECT 'batch', p.id, p.place_kind || ':' || p.place_id, p.quantity, b.last_holder,
                               (SELECT max(h.happened_at) FROM batch_history h
                                 WHERE h.id = p.id AND p.place_kind || ':' || p.place_id IN (h.source, h.target))
                        FROM batch_place p JOIN batch_balance b ON b.id = p.id
                        WHERE (p.place_kind = 'missing' AND p.quantity <> 0)
                           OR (p.place_kind NOT IN ('supplier', 'slit') AND p.quantity < 0)
                        ORDER BY since, id""")
                .query((row, number) -> finding(
                        row.getString("material"),
                        row.getString("id"),
                        Place.parse(row.getString("place")),
                        row.getLong("quantity"),
                        row.getString("last_holder"),
                        row.getObject("since", OffsetDateTime.class)))
                .list();
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

package org.bandtrail.supplystock.traces;

/**
 * The statements that follow material: the family of a lot or reel (with all strips slit from it), and its line back to
 * what was delivered. A strip and the reel it was made from meet at the place of their slitting, where the wide reel's
 * balance is above zero and the strip's below.
 */
final class TraceSql {
    private TraceSql() {}

    /** {@code family (holding, id)}: what the trace is about, with strips if it goes on. */
    static String family(TraceSubject subject) {
        String start = "WITH RECURSIVE family AS (SELECT holding::text AS holding, id::text AS id FROM ("
                + subject.holdings() + ") AS start";
        return subject.what().goesOn() ? start + """

                        UNION
                        SELECT 'reel', strip.id FROM family
                        JOIN reel_place wide ON family.holding = 'reel' AND wide.id = family.id
                             AND wide.place_kind = 'slit' AND wide.quantity > 0
                        JOIN reel_place strip ON strip.place_kind = 'slit' AND strip.place_id = wide.place_id
                             AND strip.quantity < 0)""" : start + " GROUP BY 1, 2)";
    }

    /**
     * {@code back (holding, id, ancestor)}: each of the family with itself and every reel it was made from; and {@code
     * origin}: the delivery behind each.
     */
    static final String ORIGINS = """
            , back AS (
                SELECT holding, id, id AS ancestor FROM family
                UNION
                SELECT back.holding, back.id, wide.id FROM back
                JOIN reel_place strip ON back.holding = 'reel' AND strip.id = back.ancestor
                     AND strip.place_kind = 'slit' AND strip.quantity < 0
                JOIN reel_place wide ON wide.place_kind = 'slit' AND wide.place_id = strip.place_id AND wide.quantity > 0),
            origin AS (
                SELECT back.holding, back.id AS of_id, d.lot, d.material, d.kind, d.supplier_id, d.purchase_id,
                       d.purchase_line, d.delivery_id, d.delivered_on, d.expires_on
                FROM back
                JOIN delivered_holding d ON d.holding = back.holding AND d.id = back.ancestor)""";

    /** {@code spot}: every place that holds or held something of the family. */
    static final String SPOTS = """
            , spot AS (
                SELECT f.holding, f.id, p.place_kind, p.place_id, p.quantity
                FROM family f JOIN reel_place p ON f.holding = 'reel' AND p.id = f.id
                WHERE p.place_kind NOT IN ('supplier', 'slit')
                UNION ALL
                SELECT f.holding, f.id, p.place_kind, p.place_id, p.quantity
                FROM family f JOIN batch_place p ON f.holding = 'batch' AND p.id = f.id
                WHERE p.place_kind <> 'supplier')""";
}

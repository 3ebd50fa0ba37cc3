package org.bandtrail.supplystock.counts;

import org.bandtrail.supplystock.holdings.Place;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Which places are being counted, written in the transaction that opens, approves or cancels: two open counts of one shelf
 * would post the same difference twice, and the list of counts, which follows a moment later, cannot keep two people from
 * opening at once. Openings of one depot wait for each other.
 */
@Repository
class OpenScopes {
    private final JdbcClient jdbc;

    OpenScopes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Takes a place for a count; call it inside the work that opens it.
     *
     * @throws CountRefused if it is no depot or bin, or it or a part of it is being counted
     */
    void take(CountId count, Place scope) {
        String depot = scope.id().split("/", 2)[0];
        jdbc.sql("SELECT pg_advisory_xact_lock(hashtext('count of ' || ?)::bigint)")
                .param(depot)
                .query(row -> {});
        String place = scope.toString();
        jdbc.sql("""
                        SELECT count_id FROM count_scope WHERE count_id <> :count
                           AND (place = :place OR place LIKE :place || '/%' OR :place LIKE place || '/%') LIMIT 1""")
                .param("count", count.value())
                .param("place", place)
                .query(String.class)
                .optional()
                .ifPresent(other -> {
                    throw new CountRefused.CountOpenAlready(other, scope);
                });
        jdbc.sql("INSERT INTO count_scope (count_id, place) VALUES (?, ?) ON CONFLICT DO NOTHING")
                .params(count.value(), place)
                .update();
    }

    /** Gives the place back; call it inside the work that approves or cancels. */
    void giveBack(CountId count) {
        jdbc.sql("DELETE FROM count_scope WHERE count_id = ?")
                .param(count.value())
                .update();
    }
}

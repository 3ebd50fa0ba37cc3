package org.bandtrail.supplystock.bins;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of bins, with what lies in each. */
@Repository
public class Bins {
    private final JdbcClient jdbc;

    Bins(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether the bin is marked. */
    public boolean isMarked(BinId bin) {
        return jdbc.sql("SELECT count(*) FROM bin WHERE bin_id = ?")
                        .param(bin.value())
                        .query(Long.class)
                        .single()
                > 0;
    }

    /**
     * One page of bins with how much is in each.
     *
     * @param depot only bins of this depot, or null
     * @param after bin after which the page begins, or null
     */
    List<BinRow> page(@Nullable String depot, @Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT b.bin_id, b.depot_id, b.words,
                               (SELECT count(*) FROM reel_place p
                                 WHERE p.place_kind = 'depot' AND p.place_id = b.bin_id AND p.quantity <> 0) AS reels,
                               (SELECT coalesce(sum(p.quantity), 0) FROM reel_place p
                                 WHERE p.place_kind = 'depot' AND p.place_id = b.bin_id) AS mm,
                               (SELECT coalesce(sum(p.quantity), 0) FROM batch_place p
                                 WHERE p.place_kind = 'depot' AND p.place_id = b.bin_id) AS pieces
                        FROM bin b
                        WHERE (:depot::varchar IS NULL OR b.depot_id = :depot)
                          AND (:after::varchar IS NULL OR b.bin_id > :after)
                        ORDER BY b.bin_id LIMIT :limit""")
                .param("depot", depot)
                .param("after", after)
                .param("limit", limit)
                .query((row, number) -> new BinRow(
                        row.getString("bin_id"),
                        row.getString("depot_id"),
                        row.getString("words"),
                        row.getLong("reels"),
                        row.getLong("mm"),
                        row.getLong("pieces")))
                .list();
    }

    /** Everything that lies in a bin, reels before batches. */
    List<BinRow.Content> contents(BinId bin) {
        return jdbc.sql("""
                        SELECT 'reel' AS holding, p.id, b.material, p.quantity
                        FROM reel_place p JOIN reel_balance b ON b.id = p.id
                        WHERE p.place_kind = 'depot' AND p.place_id = :bin AND p.quantity <> 0
                        UNION ALL
                        SELECT 'batch', p.id, b.material, p.quantity
                        FROM batch_place p JOIN batch_balance b ON b.id = p.id
                        WHERE p.place_kind = 'depot' AND p.place_id = :bin AND p.quantity <> 0
                        ORDER BY 1 DESC, 2""")
                .param("bin", bin.value())
                .query((row, number) ->
                        new BinRow.Content(row.getString(1), row.getString(2), row.getString(3), row.getLong(4)))
                .list();
    }
}

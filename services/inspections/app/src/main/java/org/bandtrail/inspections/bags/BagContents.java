package org.bandtrail.inspections.bags;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is in every bag, and what every load took away. */
@Repository
class BagContents {
    private final JdbcClient jdbc;

    BagContents(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One bag.
     *
     * @param tapeMm tape in it now, millimetres
     * @param meshMm mesh in it now, millimetres
     * @param pieces fasteners in it now
     * @param state {@code open}, or {@code gone} if it left with a load and nothing was told to have gone in since
     * @param loadId the load it last left with, null if it never did
     */
    record BagRow(
            String bagId,
            long tapeMm,
            long meshMm,
            long pieces,
            String state,
            @Nullable String loadId,
            @Nullable Instant goneAt) {}

    /**
     * One load.
     *
     * @param tapeMm tape it took, millimetres
     * @param meshMm mesh it took, millimetres
     * @param pieces fasteners it took
     */
    record LoadRow(
            String loadId,
            String carrier,
            List<String> bagIds,
            long tapeMm,
            long meshMm,
            long pieces,
            Instant happenedAt,
            String by,
            List<String> flags) {}

    List<BagRow> bags(@Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT b.bag_id, gone.load_id, gone.happened_at, inside.*
                        FROM (SELECT bag_id FROM bag_move UNION SELECT bag_id FROM bag_departure) b
                        LEFT JOIN LATERAL (
                            SELECT load_id, happened_at FROM bag_departure d WHERE d.bag_id = b.bag_id
                            ORDER BY happened_at DESC, load_id DESC LIMIT 1) gone ON true
                        CROSS JOIN LATERAL (
                            SELECT coalesce(sum(signed) FILTER (WHERE kind = 'TAPE'), 0) AS tape_mm,
                                   coalesce(sum(signed) FILTER (WHERE kind = 'MESH'), 0) AS mesh_mm,
                                   coalesce(sum(signed) FILTER (WHERE kind = 'FASTENER'), 0) AS pieces
                            FROM (SELECT kind, CASE 'bag:' || b.bag_id WHEN target THEN quantity
                                                                       WHEN source THEN -quantity ELSE 0 END AS signed
                                  FROM bag_move m WHERE m.bag_id = b.bag_id) each) inside
                        WHERE CAST(:after AS varchar) IS NULL OR b.bag_id > :after ORDER BY b.bag_id LIMIT :limit""")
                .param("after", after)
                .param("limit", limit)
                .query((row, number) -> {
                    long tape = row.getLong("tape_mm");
                    long mesh = row.getLong("mesh_mm");
                    long pieces = row.getLong("pieces");
                    String load = row.getString("load_id");
                    boolean gone = load != null && tape == 0 && mesh == 0 && pieces == 0;
                    OffsetDateTime at = row.getObject("happened_at", OffsetDateTime.class);
                    return new BagRow(
                            row.getString("bag_id"),
                            tape,
                            mesh,
                            pieces,
                            gone ? "gone" : "open",
                            load,
                            at == null ? null : at.toInstant());
                })
                .list();
    }

    List<LoadRow> loads(@Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT d.load_id, max(d.carrier) AS carrier, max(d.told_by) AS told_by,
                               max(d.happened_at) AS happened_at, array_agg(d.bag_id ORDER BY d.bag_id) AS bags,
                               ARRAY(SELECT DISTINCT f FROM bag_departure x, unnest(x.flags) AS f
                                     WHERE x.load_id = d.load_id ORDER BY f) AS flags,
                               max(took.tape_mm) AS tape_mm, max(took.mesh_mm) AS mesh_mm, max(took.pieces) AS pieces
                        FROM bag_departure d
                        CROSS JOIN LATERAL (
                            SELECT coalesce(sum(signed) FILTER (WHERE kind = 'TAPE'), 0) AS tape_mm,
                                   coalesce(sum(signed) FILTER (WHERE kind = 'MESH'), 0) AS mesh_mm,
                                   coalesce(sum(signed) FILTER (WHERE kind = 'FASTENER'), 0) AS pieces
                            FROM (SELECT kind, CASE 'disposed:' || d.load_id WHEN target THEN quantity
                                                                             WHEN source THEN -quantity
                                                                             ELSE 0 END AS signed
                                  FROM bag_move m
                                  WHERE m.target = 'disposed:' || d.load_id
                                     OR m.source = 'disposed:' || d.load_id) each) took
                        WHERE CAST(:after AS varchar) IS NULL OR d.load_id > :after
                        GROUP BY d.load_id ORDER BY d.load_id LIMIT :limit""")
                .param("after", after)
                .param("limit", limit)
                .query((row, number) -> new LoadRow(
                        row.getString("load_id"),
                        row.getString("carrier"),
                        Arrays.asList((String[]) row.getArray("bags").getArray()),
                        row.getLong("tape_mm"),
                        row.getLong("mesh_mm"),
                        row.getLong("pieces"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getString("told_by"),
                        Arrays.asList((String[]) row.getArray("flags").getArray())))
                .list();
    }
}

package org.bandtrail.siteinstalls.maps;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Reads what stands in a box. */
@Repository
class Maps {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int MOST_TREES = 400;
    private static final int MOST_SITES = 300;
    private static final int CELLS = 12;
    private static final int E7 = 7;

    /** Standing trees in the box, each with what hangs on it. */
    private static final String TREES = """
            SELECT tree.tree_id, tree.site_id, tree.tag, tree.species, tree.latitude_e7, tree.longitude_e7,
                   CASE WHEN hung.due THEN 'DUE' WHEN hung.tree_id IS NULL THEN 'NO_BAND' ELSE 'BAND_UP' END AS state
            FROM tree LEFT JOIN (
                SELECT coalesce(trunk.merged_into, band.tree_id) AS tree_id,
                       coalesce(bool_or(must_remove_by <= :day), false) AS due
                FROM band LEFT JOIN tree AS trunk ON trunk.tree_id = band.tree_id
                WHERE state = 'up' GROUP BY 1
            ) AS hung ON hung.tree_id = tree.tree_id
            WHERE tree.gone_at IS NULL AND tree.merged_into IS NULL
              AND tree.latitude_e7 BETWEEN :south AND :north
              AND tree.longitude_e7 BETWEEN :west AND :east
            """;

    private final JdbcClient jdbc;

    Maps(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A box in ten-millionths of a degree. */
    record BoxE7(int south, int west, int north, int east) {
        MapView.Box degrees() {
            return new MapView.Box(Maps.degrees(south), Maps.degrees(west), Maps.degrees(north), Maps.degrees(east));
        }
    }

    /** What stands in the box on the day; null is the box around everything. */
    MapView view(@Nullable BoxE7 asked, LocalDate day) {
        long placeless = jdbc.sql("""
                        SELECT count(*) FROM tree
                        WHERE latitude_e7 IS NULL AND gone_at IS NULL AND merged_into IS NULL""").query(Long.class).single();
        Optional<BoxE7> box = Optional.ofNullable(asked).or(this::around);
        if (box.isEmpty()) {
            return new MapView(null, List.of(), List.of(), List.of(), 0, placeless);
        }
        BoxE7 here = box.get();
        long count = count(here);
        boolean gathered = count > MOST_TREES;
        return new MapView(
                here.degrees(),
                sites(here),
                gathered ? List.of() : trees(here, day),
                gathered ? clusters(here, day) : List.of(),
                count,
                placeless);
    }

    private Optional<BoxE7> around() {
        return jdbc.sql("""
                        SELECT min(south) AS south, min(west) AS west, max(north) AS north, max(east) AS east FROM (
                            SELECT coalesce(south_e7, latitude_e7) AS south, coalesce(west_e7, longitude_e7) AS west,
                                   coalesce(north_e7, latitude_e7) AS north, coalesce(east_e7, longitude_e7) AS east
                            FROM site
                            UNION ALL
                            SELECT min(latitude_e7), min(longitude_e7), max(latitude_e7), max(longitude_e7) FROM tree
                            WHERE gone_at IS NULL AND merged_into IS NULL
                        ) AS places HAVING min(south) IS NOT NULL""").query((row, number) -> box(row)).optional();
    }

    private long count(BoxE7 box) {
        return jdbc.sql("""
                        SELECT count(*) FROM tree WHERE gone_at IS NULL AND merged_into IS NULL
                          AND latitude_e7 BETWEEN :south AND :north AND longitude_e7 BETWEEN :west AND :east""")
                .param("south", box.south())
                .param("north", box.north())
                .param("west", box.west())
                .param("east", box.east())
                .query(Long.class)
                .single();
    }

    private List<MapView.TreeHere> trees(BoxE7 box, LocalDate day) {
        return in(box, TREES + "ORDER BY tree.site_id, tree.tree_id LIMIT " + MOST_TREES)
                .param("day", day)
                .query((row, number) -> new MapView.TreeHere(
                        row.getString("tree_id"),
                        row.getString("site_id"),
                        row.getString("tag"),
                        row.getString("species"),
                        degrees(row.getInt("latitude_e7")),
                        degrees(row.getInt("longitude_e7")),
                        MapView.State.valueOf(row.getString("state"))))
                .list();
    }

    private List<MapView.Cluster> clusters(BoxE7 box, LocalDate day) {
        return in(box, """
                        SELECT round(avg(latitude_e7))::int AS lat, round(avg(longitude_e7))::int AS lon,
                               min(latitude_e7) AS south, min(longitude_e7) AS west,
                               max(latitude_e7) AS north, max(longitude_e7) AS east,
                               count(*) FILTER (WHERE state = 'NO_BAND') AS no_band,
                               count(*) FILTER (WHERE state = 'BAND_UP') AS band_up,
                               count(*) FILTER (WHERE state = 'DUE') AS due
                        FROM (""" + TREES + """
                        ) AS trees
                        GROUP BY (latitude_e7::bigint - :south) * :cells / greatest(:north - :south, 1),
                                 (longitude_e7::bigint - :west) * :cells / greatest(:east::bigint - :west, 1)
                        ORDER BY lat DESC, lon""")
                .param("day", day)
                .param("cells", CELLS)
                .query((row, number) -> new MapView.Cluster(
                        degrees(row.getInt("lat")),
                        degrees(row.getInt("lon")),
                        box(row).degrees(),
                        row.getLong("no_band"),
                        row.getLong("band_up"),
                        row.getLong("due")))
                .list();
    }

    private List<MapView.SiteHere> sites(BoxE7 box) {
        return in(box, """
                        SELECT site_id, name, latitude_e7, longitude_e7, boundary,
                               (SELECT count(*) FROM tree WHERE tree.site_id = site.site_id) AS trees,
                               (SELECT count(*) FROM band
                                WHERE band.site_id = site.site_id AND state = 'up') AS bands_up
                        FROM site
                        WHERE coalesce(north_e7, latitude_e7) >= :south AND coalesce(south_e7, latitude_e7) <= :north
                          AND coalesce(east_e7, longitude_e7) >= :west AND coalesce(west_e7, longitude_e7) <= :east
                        ORDER BY site_id LIMIT """ + " " + MOST_SITES)
                .query((row, number) -> new MapView.SiteHere(
                        row.getString("site_id"),
                        row.getString("name"),
                        degreesOrNull(row, "latitude_e7"),
                        degreesOrNull(row, "longitude_e7"),
                        row.getString("boundary") == null ? null : JSON.readTree(row.getString("boundary")),
                        row.getLong("trees"),
                        row.getLong("bands_up")))
                .list();
    }

    private JdbcClient.StatementSpec in(BoxE7 box, String sql) {
        return jdbc.sql(sql)
                .param("south", box.south())
                .param("north", box.north())
                .param("west", box.west())
                .param("east", box.east());
    }

    private static BoxE7 box(ResultSet row) throws SQLException {
        return new BoxE7(row.getInt("south"), row.getInt("west"), row.getInt("north"), row.getInt("east"));
    }

    private static @Nullable BigDecimal degreesOrNull(ResultSet row, String column) throws SQLException {
        Integer e7 = row.getObject(column, Integer.class);
        return e7 == null ? null : degrees(e7);
    }

    private static BigDecimal degrees(int e7) {
        return BigDecimal.valueOf(e7, E7);
    }
}

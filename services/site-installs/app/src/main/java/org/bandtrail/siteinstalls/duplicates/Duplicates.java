package org.bandtrail.siteinstalls.duplicates;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.bandtrail.siteinstalls.sites.Point;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Finds pairs of trees that look like one, in one statement over the whole register: trees of a site that share a tag,
 * and trees in the same or a neighbouring cell of a grid. A cell is as wide as two places may be apart, east to west so
 * wide as that is at the tree farthest from the equator, so no pair falls between cells. The statement lets no pair out
 * that is near enough; {@link TreeDistance} then takes those away that are not.
 */
@Repository
class Duplicates {
    /** Metres in a degree of latitude where it is shortest, at the equator: 110,574.3886 (computed by GeographicLib). */
    private static final double LATITUDE = 110_574.38;
    /** Metres in a degree of longitude at the equator, 111,319.4908; elsewhere at least that times the cosine. */
    private static final double LONGITUDE = 111_319.49;

    private static final String PAIRS = """
            WITH candidate AS MATERIALIZED (
                SELECT tree_id COLLATE "C" AS tree_id, site_id, girth_mm,
                       latitude_e7::bigint AS lat, longitude_e7::bigint AS lon,
                       regexp_replace(regexp_replace(upper(tag), '(^|[^0-9])0+(?=[0-9])', '\\1', 'g'),
                                      '[^[:alnum:]]', '', 'g') AS spelt
                FROM tree
                WHERE merged_into IS NULL AND (gone_at IS NULL OR gone_how = 'not found')),
            tagged AS (
                SELECT tree_id, site_id, spelt, count(*) OVER (PARTITION BY site_id, spelt) AS alike
                FROM candidate WHERE spelt <> ''),
            placed AS MATERIALIZED (
                SELECT * FROM (SELECT tree_id, girth_mm, lat, lon, count(*) OVER (PARTITION BY lat, lon) AS here
                               FROM candidate WHERE lat IS NOT NULL) AS place
                WHERE here <= :mostPlace),
            reach AS (
                SELECT ceil(:near / :latitude * 1e7)::bigint AS up,
                       ceil(:near / :longitude / cos(radians(least(coalesce(max(abs(lat)), 0) / 1e7, 89.9))) * 1e7)
                       ::bigint AS aside
                FROM placed),
            cell AS MATERIALIZED (
                SELECT placed.*, ((lat + 900000000) / (4 * up) << 32) + (lon + 5400000000) / (4 * aside) AS spot
                FROM placed, reach),
            round_the_world AS (
                SELECT tree_id, lat, lon + turn AS lon, girth_mm
                FROM placed, reach, (VALUES (0::bigint), (3600000000), (-3600000000)) AS t (turn)
                WHERE abs(lon + turn) <= 1800000000 + aside),
            looking AS MATERIALIZED (
                SELECT around.*, (y << 32) + x AS spot
                FROM round_the_world AS around, reach,
                     generate_series((lat + 900000000 - up) / (4 * up), (lat + 900000000 + up) / (4 * up)) AS y,
                     generate_series((lon + 5400000000 - aside) / (4 * aside),
                                     (lon + 5400000000 + aside) / (4 * aside)) AS x),
            found AS (
                SELECT a.tree_id AS first, b.tree_id AS second, TRUE AS same_tag
                FROM tagged AS a JOIN tagged AS b USING (site_id, spelt)
                WHERE a.tree_id < b.tree_id AND a.alike <= :mostTag
                UNION ALL
                SELECT a.tree_id, b.tree_id, FALSE
                FROM looking AS a JOIN cell AS b USING (spot)
                WHERE a.tree_id < b.tree_id
                  AND ((a.lat - b.lat) * :latitude / 1e7) ^ 2
                      + ((a.lon - b.lon) * :longitude * cos(radians(greatest(abs(a.lat), abs(b.lat)) / 1e7)) / 1e7) ^ 2
                      <= :near ^ 2
                  AND (a.girth_mm IS NULL OR b.girth_mm IS NULL
                       OR abs(a.girth_mm - b.girth_mm) * 1000 <= :permille * greatest(a.girth_mm, b.girth_mm))),
            pair AS (
                SELECT first, second, bool_or(same_tag) AS same_tag FROM found GROUP BY first, second),
            apart AS (
                SELECT first_tree, second_tree
                FROM (SELECT DISTINCT ON (first_tree, second_tree) * FROM tree_pair_decision
                      ORDER BY first_tree, second_tree, number DESC) AS latest
                WHERE decision = 'apart')
            """;

    private static final String SHOWN = """
            SELECT same_tag, %s, %s
            FROM pair JOIN tree AS a ON a.tree_id = first JOIN tree AS b ON b.tree_id = second
            WHERE (first, second) > (:first COLLATE "C", :second COLLATE "C")
              AND NOT EXISTS (SELECT FROM apart WHERE first_tree = first AND second_tree = second)
              AND (CAST(:site AS text) IS NULL OR a.site_id = :site OR b.site_id = :site)
            ORDER BY first, second LIMIT :limit""".formatted(columns("a"), columns("b"));

    private final JdbcClient jdbc;
    private final DuplicateRules rules;

    Duplicates(JdbcClient jdbc, DuplicateRules rules) {
        this.jdbc = jdbc;
        this.rules = rules;
    }

    /**
     * A page of pairs.
     *
     * @param rows at most as many as were asked for, perhaps fewer even if there is a next page
     * @param next where the next page begins, null if this is the last
     */
    record Page(List<DuplicatePair> rows, @Nullable PairKey next) {}

    /** One page of pairs of which nothing is decided, by identity. */
    Page page(@Nullable String site, PairKey after, int limit) {
        List<DuplicatePair> found = jdbc.sql(PAIRS + SHOWN)
                .param("near", rules.nearMm() / 1_000.0)
                .param("permille", rules.girthPermille())
                .param("mostTag", rules.mostWithOneTag())
                .param("mostPlace", rules.mostAtOnePlace())
                .param("latitude", LATITUDE)
                .param("longitude", LONGITUDE)
                .param("site", site)
                .param("first", after.first())
                .param("second", after.second())
                .param("limit", limit)
                .query(this::row)
                .list();
        return new Page(
                found.stream().filter(pair -> pair.sameTag() || pair.near()).toList(),
                found.size() < limit ? null : PairKey.of(found.getLast()));
    }

    private static String columns(String tree) {
        return """
                %1$s.tree_id AS %1$s_tree_id, %1$s.site_id AS %1$s_site_id, %1$s.tag AS %1$s_tag,
                %1$s.species AS %1$s_species, %1$s.species_code AS %1$s_species_code,
                %1$s.latitude_e7 AS %1$s_latitude_e7, %1$s.longitude_e7 AS %1$s_longitude_e7,
                %1$s.girth_mm AS %1$s_girth_mm,
                (SELECT count(*) FROM band WHERE band.tree_id = %1$s.tree_id AND state = 'up') AS %1$s_bands_up""".formatted(tree);
    }

    private DuplicatePair row(ResultSet row, int number) throws SQLException {
        DuplicatePair.One first = one(row, "a_");
        DuplicatePair.One second = one(row, "b_");
        Point here = place(row, "a_");
        Point there = place(row, "b_");
        Long distance = here == null || there == null ? null : TreeDistance.mm(here, there);
        Long girths = first.girthMm() == null || second.girthMm() == null
                ? null
                : (Long) Math.abs(first.girthMm() - second.girthMm());
        boolean near = distance != null && distance <= rules.nearMm();
        return new DuplicatePair(first, second, row.getBoolean("same_tag"), distance, near, girths);
    }

    private static DuplicatePair.One one(ResultSet row, String prefix) throws SQLException {
        Point place = place(row, prefix);
        return new DuplicatePair.One(
                row.getString(prefix + "tree_id"),
                row.getString(prefix + "site_id"),
                row.getString(prefix + "tag"),
                row.getString(prefix + "species"),
                row.getString(prefix + "species_code"),
                place == null ? null : Point.degrees(place.latitudeE7()),
                place == null ? null : Point.degrees(place.longitudeE7()),
                row.getObject(prefix + "girth_mm", Long.class),
                row.getLong(prefix + "bands_up"));
    }

    private static @Nullable Point place(ResultSet row, String prefix) throws SQLException {
        Integer latitude = row.getObject(prefix + "latitude_e7", Integer.class);
        Integer longitude = row.getObject(prefix + "longitude_e7", Integer.class);
        return latitude == null || longitude == null ? null : new Point(latitude, longitude);
    }
}

package org.bandtrail.siteinstalls.trees;

import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeGone;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeMerged;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeRegistered;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeUnmerged;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes the rows of the register, by sets. */
final class TreeTable {
    private final JdbcClient jdbc;

    TreeTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(List<TreeRegistered> registered) {
        List<TreeDetails> details =
                registered.stream().map(TreeRegistered::details).toList();
        jdbc.sql("""
                        INSERT INTO tree (tree_id, registered_at, site_id, tag, species, species_code, latitude_e7,
                                          longitude_e7, note)
                        SELECT * FROM unnest(?::text[], ?::timestamptz[], ?::text[], ?::text[], ?::text[], ?::text[],
                                             ?::integer[], ?::integer[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        texts(registered, tree -> tree.treeId().value()),
                        texts(
                                registered,
                                tree -> tree.when()
                                        .happened()
                                        .atOffset(ZoneOffset.UTC)
                                        .toString()),
                        texts(details, tree -> tree.siteId().value()),
                        texts(details, TreeDetails::tag),
                        texts(details, TreeDetails::species),
                        codes(details),
                        degrees(details, Point::latitudeE7),
                        degrees(details, Point::longitudeE7),
                        texts(details, TreeDetails::note))
                .update();
    }

    void correct(Map<TreeId, TreeDetails> corrected) {
        Collection<TreeDetails> details = corrected.values();
        jdbc.sql("""
                        UPDATE tree SET site_id = now.site_id, tag = now.tag, species = now.species,
                                        species_code = now.species_code, latitude_e7 = now.latitude_e7,
                                        longitude_e7 = now.longitude_e7, note = now.note
                        FROM unnest(?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::integer[], ?::integer[],
                                    ?::text[])
                             AS now (tree_id, site_id, tag, species, species_code, latitude_e7, longitude_e7, note)
                        WHERE tree.tree_id = now.tree_id""")
                .params(
                        texts(corrected.keySet(), TreeId::value),
                        texts(details, tree -> tree.siteId().value()),
                        texts(details, TreeDetails::tag),
                        texts(details, TreeDetails::species),
                        codes(details),
                        degrees(details, Point::latitudeE7),
                        degrees(details, Point::longitudeE7),
                        texts(details, TreeDetails::note))
                .update();
    }

    /** Marks trees as gone, or as standing where the event is null. */
    void mark(Map<TreeId, @Nullable TreeGone> gone) {
        jdbc.sql("""
                        UPDATE tree SET gone_at = now.gone_at, gone_how = now.gone_how
                        FROM unnest(?::text[], ?::timestamptz[], ?::text[]) AS now (tree_id, gone_at, gone_how)
                        WHERE tree.tree_id = now.tree_id""")
                .params(
                        texts(gone.keySet(), TreeId::value),
                        gone.values().stream()
                                .map(event -> event == null
                                        ? null
                                        : event.when()
                                                .happened()
                                                .atOffset(ZoneOffset.UTC)
                                                .toString())
                                .toArray(String[]::new),
                        gone.values().stream()
                                .map(event -> event == null ? null : event.how().words())
                                .toArray(String[]::new))
                .update();
    }

    /**
     * Points merged trees to the one that stays, or to none where the event is null. A tree that loses one loses its
     * girth too, until {@link #takeLatestGirths} looks what is left.
     */
    void merge(Map<TreeId, @Nullable TreeMerged> merged, List<TreeUnmerged> parted) {
        jdbc.sql("""
                        UPDATE tree SET merged_into = now.merged_into, merged_at = now.merged_at
                        FROM unnest(?::text[], ?::text[], ?::timestamptz[]) AS now (tree_id, merged_into, merged_at)
                        WHERE tree.tree_id = now.tree_id""")
                .params(
                        texts(merged.keySet(), TreeId::value),
                        merged.values().stream()
                                .map(event ->
                                        event == null ? null : event.kept().value())
                                .toArray(String[]::new),
                        merged.values().stream()
                                .map(event -> event == null
                                        ? null
                                        : event.when()
                                                .recorded()
                                                .atOffset(ZoneOffset.UTC)
                                                .toString())
                                .toArray(String[]::new))
                .update();
        jdbc.sql("""
                        UPDATE tree SET girth_mm = NULL, girth_measured_at = NULL, girth_height_mm = NULL
                        WHERE tree_id = ANY (?)""").param(texts(parted, tree -> tree.kept().value())).update();
    }

    /**
     * The girth that was measured last counts, of two at one moment the one told later, as in {@link Tree}; a tree that
     * stands for others too has theirs as its own.
     */
    void takeLatestGirths(String[] trees) {
        jdbc.sql("""
                        WITH touched AS (SELECT tree_id FROM unnest(?::text[]) AS t (tree_id)
                                         UNION
                                         SELECT merged_into FROM tree
                                         WHERE tree_id = ANY (?) AND merged_into IS NOT NULL),
                             member AS (SELECT tree_id AS owner, tree_id FROM touched
                                        UNION ALL
                                        SELECT tree.merged_into, tree.tree_id
                                        FROM tree JOIN touched ON tree.merged_into = touched.tree_id)
                        UPDATE tree SET girth_mm = latest.girth_mm, girth_measured_at = latest.happened_at,
                                        girth_height_mm = latest.girth_height_mm
                        FROM (SELECT DISTINCT ON (owner) owner, girth_mm, girth_height_mm, happened_at
                              FROM member JOIN tree_step ON tree_step.tree_id = member.tree_id
                              WHERE girth_mm IS NOT NULL
                              ORDER BY owner, happened_at DESC, position DESC) AS latest
                        WHERE tree.tree_id = latest.owner""").params(trees, trees).update();
    }

    private static @Nullable String[] codes(Collection<TreeDetails> details) {
        return details.stream()
                .map(tree ->
                        tree.speciesCode() == null ? null : tree.speciesCode().value())
                .toArray(String[]::new);
    }

    private static @Nullable Integer[] degrees(Collection<TreeDetails> details, Function<Point, Integer> part) {
        return details.stream()
                .map(tree -> tree.position() == null ? null : part.apply(tree.position()))
                .toArray(Integer[]::new);
    }

    private static <T> String[] texts(Collection<T> rows, Function<T, String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }
}

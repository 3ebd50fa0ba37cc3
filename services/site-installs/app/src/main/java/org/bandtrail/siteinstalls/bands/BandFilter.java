package org.bandtrail.siteinstalls.bands;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which bands a list shows. Only what is asked for gets into the statement: a condition that holds for any value makes
 * the database read the whole table.
 *
 * @param site only this site, null for all
 * @param tree only this tree and those that turned out to be it, null for all
 * @param state up or down, null for both
 * @param device code of the kind of device, null for all
 * @param text part of band, tree, person or reel, null for all
 * @param removalBy only bands that are up and must be off by this day, those first that must come off first; null for
 *     all bands by identity
 */
public record BandFilter(
        @Nullable String site,
        @Nullable String tree,
        @Nullable String state,
        @Nullable String device,
        @Nullable String text,
        @Nullable LocalDate removalBy) {
    private static final String BETWEEN = "~";

    /** All bands. */
    public static final BandFilter ALL = new BandFilter(null, null, null, null, null, null);

    /** The statement; named parameters are in {@link #values}, and limit. */
    String sql(@Nullable String after) {
        StringBuilder sql = new StringBuilder("SELECT * FROM band WHERE TRUE");
        add(sql, site, " AND site_id = :site");
        add(
                sql,
                tree,
                " AND tree_id = ANY (ARRAY(SELECT :tree UNION ALL"
                        + " SELECT other.tree_id FROM tree AS other WHERE other.merged_into = :tree))");
        add(sql, state, " AND state = :state");
        add(sql, device, " AND device = :device");
        add(
                sql,
                text,
                " AND (band_id ILIKE :like OR tree_id ILIKE :like OR person_id ILIKE :like"
                        + " OR tape_reel ILIKE :like OR mesh_reel ILIKE :like)");
        if (removalBy == null) {
            add(sql, after, " AND band_id > :after");
            return sql.append(" ORDER BY band_id LIMIT :limit").toString();
        }
        sql.append(" AND state = 'up' AND must_remove_by <= :removalBy");
        add(sql, after, " AND (must_remove_by, band_id) > (:afterDay, :after)");
        return sql.append(" ORDER BY must_remove_by, band_id LIMIT :limit").toString();
    }

    /** What the statement is filled with. */
    Map<String, Object> values(@Nullable String after) {
        Map<String, Object> values = new LinkedHashMap<>();
        put(values, "site", site);
        put(values, "tree", tree);
        put(values, "state", state);
        put(values, "device", device);
        put(values, "like", text == null ? null : "%" + text.replaceAll("([\\\\%_])", "\\\\$1") + "%");
        put(values, "removalBy", removalBy);
        if (after != null && removalBy != null) {
            int mark = after.indexOf(BETWEEN);
            values.put("afterDay", LocalDate.parse(after.substring(0, Math.max(mark, 0))));
            values.put("after", after.substring(mark + 1));
        } else {
            put(values, "after", after);
        }
        return values;
    }

    /** The cursor that continues behind this band. */
    String next(BandView last) {
        return removalBy == null ? last.bandId() : last.mustRemoveBy() + BETWEEN + last.bandId();
    }

    private static void add(StringBuilder sql, @Nullable Object asked, String condition) {
        if (asked != null) {
            sql.append(condition);
        }
    }

    private static void put(Map<String, Object> values, String name, @Nullable Object value) {
        if (value != null) {
            values.put(name, value);
        }
    }
}

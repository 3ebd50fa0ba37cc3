package org.bandtrail.siteinstalls.bands;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The alarm for bands that stay on too long and rot the bark: who is past the day, who is near it. */
@Repository
public class Removals {
    private final JdbcClient jdbc;
    private final RemovalNotice notice;

    Removals(JdbcClient jdbc, RemovalNotice notice) {
        this.jdbc = jdbc;
        this.notice = notice;
    }

    /**
     * How many bands must come off.
     *
     * @param past bands up after the day by which they had to be off
     * @param near bands up that must be off within the days of notice
     * @param first the earliest such day, null if no band is past or near
     * @param noticeDays what near means
     * @param source where these days come from
     */
    public record Alarm(long past, long near, @Nullable LocalDate first, int noticeDays, String source) {}

    /** The last day that still counts as near on this day. */
    public LocalDate lastDay(LocalDate today) {
        return today.plusDays(notice.days());
    }

    /** The alarm of one site or one tree, or of all bands. */
    public Alarm alarm(@Nullable String site, @Nullable String tree, LocalDate today) {
        Map<String, Object> values = new HashMap<>(Map.of("today", today, "last", lastDay(today)));
        String where = "state = 'up' AND must_remove_by <= :last";
        if (site != null) {
            where += " AND site_id = :site";
            values.put("site", site);
        }
        if (tree != null) {
            where += " AND tree_id = ANY (ARRAY(SELECT :tree UNION ALL"
                    + " SELECT other.tree_id FROM tree AS other WHERE other.merged_into = :tree))";
            values.put("tree", tree);
        }
        return jdbc.sql("""
                        SELECT count(*) FILTER (WHERE must_remove_by < :today) AS past,
                               count(*) FILTER (WHERE must_remove_by >= :today) AS near,
                               min(must_remove_by) AS first
                        FROM band WHERE\s""" + where)
                .params(values)
                .query((row, number) -> new Alarm(
                        row.getLong("past"),
                        row.getLong("near"),
                        row.getObject("first", LocalDate.class),
                        notice.days(),
                        notice.source()))
                .single();
    }
}

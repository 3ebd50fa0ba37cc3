package org.bandtrail.siteinstalls.cutplans;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All cut plans, and the reels that agreed ones bind. */
@Repository
public class CutPlans {
    private final JdbcClient jdbc;

    CutPlans(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** One page, the latest day first. */
    public List<CutPlanView> page(@Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT * FROM cut_plan
                        WHERE CAST(:after AS text) IS NULL
                           OR (day, plan_id) < (SELECT day, plan_id FROM cut_plan WHERE plan_id = :after)
                        ORDER BY day DESC, plan_id DESC LIMIT :limit""")
                .param("after", after)
                .param("limit", limit)
                .query(CutPlans::row)
                .list();
    }

    /** One plan with its parts, empty if there is none. */
    public Optional<CutPlanView.Whole> whole(CutPlanId planId) {
        return jdbc.sql("SELECT * FROM cut_plan WHERE plan_id = ?")
                .param(planId.value())
                .query((row, number) -> new CutPlanView.Whole(row(row, number), PartsJson.read(row.getString("parts"))))
                .optional();
    }

    /** Those of the reels that an agreed plan binds. */
    public Set<ReelId> bound(Collection<ReelId> reels) {
        return jdbc
                .sql("SELECT reel_id FROM cut_plan_bound_reel WHERE reel_id = ANY (?)")
                .param(reels.stream().map(ReelId::value).toArray(String[]::new))
                .query((row, number) -> new ReelId(row.getString(1)))
                .list()
                .stream()
                .collect(Collectors.toSet());
    }

    /**
     * Binds reels for a plan, within the transaction of its command.
     *
     * @return those that another plan binds already; if there is one, the command must not go through
     */
    List<ReelId> bind(CutPlanId planId, Collection<ReelId> reels) {
        String[] ids = reels.stream().map(ReelId::value).sorted().toArray(String[]::new);
        jdbc.sql("""
                        INSERT INTO cut_plan_bound_reel (reel_id, plan_id) SELECT unnest(?), ?
                        ON CONFLICT DO NOTHING""").params(ids, planId.value()).update();
        return jdbc.sql("SELECT reel_id FROM cut_plan_bound_reel WHERE reel_id = ANY (?) AND plan_id <> ?")
                .params(ids, planId.value())
                .query((row, number) -> new ReelId(row.getString(1)))
                .list();
    }

    /** Gives the reels of a plan free, within the transaction of its command. */
    void release(CutPlanId planId) {
        jdbc.sql("DELETE FROM cut_plan_bound_reel WHERE plan_id = ?")
                .param(planId.value())
                .update();
    }

    private static CutPlanView row(ResultSet row, int number) throws SQLException {
        OffsetDateTime moved = row.getObject("moved_at", OffsetDateTime.class);
        return new CutPlanView(
                row.getString("plan_id"),
                row.getString("depot_id"),
                row.getObject("day", java.time.LocalDate.class),
                row.getString("state"),
                row.getInt("trees"),
                row.getInt("pieces"),
                row.getInt("uncut"),
                row.getLong("loss_mm"),
                row.getLong("least_loss_mm"),
                row.getBoolean("proven"),
                row.getString("drawn_by"),
                instant(row.getObject("drawn_at", OffsetDateTime.class)),
                row.getString("moved_by"),
                moved == null ? null : instant(moved),
                row.getString("kit_id"),
                row.getString("reason"));
    }

    private static Instant instant(OffsetDateTime moment) {
        return moment.toInstant();
    }
}

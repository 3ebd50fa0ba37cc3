package org.bandtrail.siteinstalls.workplans;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.sites.Point;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All work plans. */
@Repository
public class WorkPlans {
    private static final String SELECT = """
            SELECT p.*, ARRAY(SELECT DISTINCT site_id FROM work_plan_tree t
                              WHERE t.plan_id = p.plan_id ORDER BY site_id) AS sites
            FROM work_plan p
            """;
    private static final String OPEN = "p.state IN ('drafted', 'agreed', 'changed')";
    private static final String BINDING = "p.state IN ('agreed', 'changed')";
    private final JdbcClient jdbc;

    WorkPlans(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page of the plans that touch these days, by their first day.
     *
     * @param open only those that are neither done nor called off
     * @param after {@code day planId} of the last row of the page before, null for the first page
     */
    public List<WorkPlanView> page(LocalDate from, LocalDate until, boolean open, @Nullable String after, int limit) {
        return jdbc.sql(SELECT + """
                        WHERE p.last_day >= :from AND p.day <= :until AND (p.day || ' ' || p.plan_id) > :after
                          AND %s ORDER BY (p.day || ' ' || p.plan_id) LIMIT :limit""".formatted(open ? OPEN : "TRUE"))
                .param("from", from)
                .param("until", until)
                .param("after", after == null ? "" : after)
                .param("limit", limit)
                .query(WorkPlans::view)
                .list();
    }

    /** One plan with everything, empty if there is none of this name. */
    public Optional<WorkPlanView.Whole> one(PlanId plan) {
        return jdbc.sql(SELECT + "WHERE p.plan_id = ?")
                .param(plan.value())
                .query(WorkPlans::view)
                .optional()
                .map(view -> new WorkPlanView.Whole(view, walk(plan), needs(plan), history(plan)));
    }

    /** Whether there is a plan of this name. */
    public boolean exists(PlanId plan) {
        return jdbc.sql("SELECT count(*) FROM work_plan WHERE plan_id = ?")
                        .param(plan.value())
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** Other open plans of a crew on these days. */
    public List<WorkPlanView> ofCrew(CrewId crew, LocalDate day, LocalDate lastDay, PlanId except) {
        return jdbc.sql(SELECT + "WHERE p.crew_id = ? AND p.last_day >= ? AND p.day <= ? AND p.plan_id <> ? AND " + OPEN
                        + " ORDER BY p.day, p.plan_id")
                .params(crew.value(), day, lastDay, except.value())
                .query(WorkPlans::view)
                .list();
    }

    /** Which of the trees stand in another open plan, and in which. */
    public Map<String, String> elsewhere(Collection<TreeId> trees, PlanId except) {
        Map<String, String> plans = new TreeMap<>();
        jdbc.sql("SELECT t.tree_id, min(p.plan_id) FROM work_plan_tree t JOIN work_plan p USING (plan_id)"
                        + " WHERE t.tree_id = ANY (?) AND p.plan_id <> ? AND " + OPEN + " GROUP BY t.tree_id")
                .params(trees.stream().map(TreeId::value).toArray(String[]::new), except.value())
                .query(row -> {
                    plans.put(row.getString(1), row.getString(2));
                });
        return plans;
    }

    /** What other agreed plans need from a depot on or before a day, by material: millimetres or pieces. */
    public Map<MaterialCode, Long> neededBefore(DepotId depot, LocalDate day, PlanId except) {
        Map<MaterialCode, Long> needed = new HashMap<>();
        jdbc.sql("SELECT n.material_code, sum(n.quantity)::bigint FROM work_plan_need n"
                        + " JOIN work_plan p USING (plan_id)"
                        + " WHERE p.depot_id = ? AND p.day <= ? AND p.plan_id <> ? AND " + BINDING + " GROUP BY 1")
                .params(depot.value(), day, except.value())
                .query(row -> {
                    needed.put(new MaterialCode(row.getString(1)), row.getLong(2));
                });
        return needed;
    }

    private List<WorkPlanView.TreeLine> walk(PlanId plan) {
        return jdbc.sql("""
                        SELECT w.*, t.tag, t.species, t.girth_mm AS girth_now, t.latitude_e7, t.longitude_e7,
                               t.gone_at IS NOT NULL AS gone,
                               (SELECT count(*) FROM band b WHERE b.tree_id = w.tree_id AND b.state = 'up') AS up
                        FROM work_plan_tree w LEFT JOIN tree t ON t.tree_id = w.tree_id
                        WHERE w.plan_id = ? ORDER BY w.step""").param(plan.value()).query(WorkPlans::line).list();
    }

    private List<PlanNeed> needs(PlanId plan) {
        return jdbc.sql("""
                        SELECT * FROM work_plan_need WHERE plan_id = ?
                        ORDER BY array_position(ARRAY['TAPE', 'MESH', 'FASTENER'], kind::text), material_code""")
                .param(plan.value())
                .query((row, number) -> new PlanNeed(
                        new MaterialCode(row.getString("material_code")),
                        MaterialKind.valueOf(row.getString("kind")),
                        row.getLong("quantity"),
                        row.getLong("longest_mm"),
                        row.getLong("pieces")))
                .list();
    }

    private List<WorkPlanView.Step> history(PlanId plan) {
        return jdbc.sql("SELECT * FROM work_plan_step WHERE plan_id = ? ORDER BY position DESC")
                .param(plan.value())
                .query((row, number) -> new WorkPlanView.Step(
                        row.getString("what"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getString("by_person"),
                        row.getString("note")))
                .list();
    }

    private static WorkPlanView view(ResultSet row, int number) throws SQLException {
        return new WorkPlanView(
                row.getString("plan_id"),
                row.getString("state"),
                row.getObject("day", LocalDate.class),
                row.getObject("last_day", LocalDate.class),
                row.getString("crew_id"),
                row.getString("depot_id"),
                row.getString("pest"),
                row.getString("programme"),
                row.getString("device"),
                row.getString("tape_code"),
                row.getString("mesh_code"),
                row.getString("fastener_code"),
                row.getString("other_code"),
                row.getInt("policy_version"),
                row.getObject("put_up_from", LocalDate.class),
                row.getObject("put_up_until", LocalDate.class),
                row.getString("note"),
                Arrays.asList((String[]) row.getArray("sites").getArray()),
                row.getInt("trees"),
                row.getInt("bands"),
                row.getObject("changed_at", OffsetDateTime.class).toInstant(),
                row.getString("changed_by"));
    }

    private static WorkPlanView.TreeLine line(ResultSet row, int number) throws SQLException {
        return new WorkPlanView.TreeLine(
                row.getInt("step"),
                row.getString("tree_id"),
                row.getString("site_id"),
                row.getString("tag"),
                row.getString("species"),
                row.getLong("girth_mm"),
                row.getObject("girth_now", Long.class),
                row.getInt("bands"),
                row.getLong("tape_mm"),
                row.getLong("mesh_mm"),
                row.getLong("fasteners"),
                row.getLong("others"),
                degrees(row.getObject("latitude_e7", Integer.class)),
                degrees(row.getObject("longitude_e7", Integer.class)),
                row.getLong("up"),
                row.getBoolean("gone"));
    }

    private static @Nullable BigDecimal degrees(@Nullable Integer e7) {
        return e7 == null ? null : Point.degrees(e7);
    }
}

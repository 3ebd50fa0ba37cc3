package org.bandtrail.siteinstalls.workplans;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanAgreed;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanCalledOff;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanChanged;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanDone;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanDrafted;
import org.bandtrail.siteinstalls.workplans.WorkPlanEvent.PlanRedrafted;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps all work plans. They are few, so each event is some statements; its trees are one. */
@Component
final class WorkPlanProjection implements Projection {
    private final JdbcClient jdbc;

    WorkPlanProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "work-plan";
    }

    @Override
    public List<String> tables() {
        return List.of("work_plan", "work_plan_tree", "work_plan_need", "work_plan_step");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(WorkPlanEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            apply(stored.position(), (WorkPlanEvent) stored.payload());
        }
    }

    private void apply(long position, WorkPlanEvent event) {
        switch (event) {
            case PlanDrafted drafted -> {
                planned(drafted, "drafted", drafted.content());
                step(position, event, "drafted", "");
            }
            case PlanRedrafted redrafted -> {
                planned(redrafted, "drafted", redrafted.content());
                step(position, event, "planned otherwise", redrafted.reason());
            }
            case PlanAgreed agreed -> {
                planned(agreed, "agreed", agreed.content());
                step(position, event, "agreed", "");
            }
            case PlanChanged changed -> {
                planned(changed, "changed", changed.content());
                step(position, event, "changed", changed.reason());
            }
            case PlanDone done -> {
                closed(done, "done");
                step(position, event, "done", done.note());
            }
            case PlanCalledOff off -> {
                closed(off, "called off");
                step(position, event, "called off", off.reason());
            }
        }
    }

    private void planned(WorkPlanEvent event, String state, PlanContent content) {
        String plan = event.planId().value();
        PlanMaterials materials = content.materials();
        jdbc.sql("DELETE FROM work_plan WHERE plan_id = ?").param(plan).update();
        jdbc.sql("""
                        INSERT INTO work_plan (plan_id, state, day, last_day, crew_id, depot_id, pest, programme,
                            device, tape_code, mesh_code, fastener_code, other_code, policy_version, put_up_from, put_up_until, note, trees, bands,
                            changed_at, changed_by)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .param(plan)
                .param(state)
                .param(content.day())
                .param(content.lastDay())
                .param(content.crew().value())
                .param(content.depot().value())
                .param(content.pest())
                .param(content.programme())
                .param(content.device())
                .param(code(materials.tape()))
                .param(code(materials.mesh()))
                .param(code(materials.fastener()))
                .param(code(materials.other()))
                .param(content.policyVersion())
                .param(content.putUpFrom())
                .param(content.putUpUntil())
                .param(content.note())
                .param(content.trees().size())
                .param(content.bands())
                .param(at(event))
                .param(event.by().value())
                .update();
        trees(plan, content.trees());
        needs(plan, content.needs());
    }

    private static @Nullable String code(@Nullable MaterialCode item) {
        return item == null ? null : item.value();
    }

    private void trees(String plan, List<PlanTree> trees) {
        jdbc.sql("DELETE FROM work_plan_tree WHERE plan_id = ?").param(plan).update();
        jdbc.sql("""
                        INSERT INTO work_plan_tree
                            (plan_id, step, tree_id, site_id, girth_mm, bands, tape_mm, mesh_mm, fasteners, others)
                        SELECT ?, step, tree_id, site_id, girth, bands, tape, mesh, fasteners, others
                        FROM unnest(?::varchar[], ?::varchar[], ?::bigint[], ?::int[], ?::bigint[], ?::bigint[],
                            ?::bigint[], ?::bigint[]) WITH ORDINALITY
                            AS t (tree_id, site_id, girth, bands, tape, mesh, fasteners, others, step)""")
                .params(
                        plan,
                        texts(trees, tree -> tree.treeId().value()),
                        texts(trees, tree -> tree.siteId().value()),
                        numbers(trees, tree -> tree.girth().mm()),
                        trees.stream().map(PlanTree::bands).toArray(Integer[]::new),
                        numbers(trees, tree -> tree.tape().mm()),
                        numbers(trees, tree -> tree.mesh().mm()),
                        numbers(trees, tree -> tree.fasteners().count()),
                        numbers(trees, tree -> tree.others().count()))
                .update();
    }

    private void needs(String plan, List<PlanNeed> needs) {
        jdbc.sql("DELETE FROM work_plan_need WHERE plan_id = ?").param(plan).update();
        for (PlanNeed need : needs) {
            jdbc.sql("""
                            INSERT INTO work_plan_need (plan_id, material_code, kind, quantity, longest_mm, pieces)
                            VALUES (?, ?, ?, ?, ?, ?)
                            ON CONFLICT (plan_id, material_code) DO UPDATE SET
                                quantity = work_plan_need.quantity + excluded.quantity,
                                longest_mm = greatest(work_plan_need.longest_mm, excluded.longest_mm),
                                pieces = work_plan_need.pieces + excluded.pieces""")
                    .params(
                            plan,
                            need.material().value(),
                            need.kind().name(),
                            need.quantity(),
                            need.longest(),
                            need.pieces())
                    .update();
        }
    }

    private void closed(WorkPlanEvent event, String state) {
        jdbc.sql("UPDATE work_plan SET state = ?, changed_at = ?, changed_by = ? WHERE plan_id = ?")
                .params(state, at(event), event.by().value(), event.planId().value())
                .update();
    }

    private void step(long position, WorkPlanEvent event, String what, String note) {
        jdbc.sql("""
                        INSERT INTO work_plan_step (position, plan_id, what, happened_at, by_person, note)
                        VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        position,
                        event.planId().value(),
                        what,
                        at(event),
                        event.by().value(),
                        note)
                .update();
    }

    private static OffsetDateTime at(WorkPlanEvent event) {
        return event.when().happened().atOffset(ZoneOffset.UTC);
    }

    private static String[] texts(List<PlanTree> trees, Function<PlanTree, String> column) {
        return trees.stream().map(column).toArray(String[]::new);
    }

    private static Long[] numbers(List<PlanTree> trees, Function<PlanTree, Long> column) {
        return trees.stream().map(column).toArray(Long[]::new);
    }
}

package org.bandtrail.siteinstalls.cutplans;

import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.Agreed;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.Drawn;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.Dropped;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.HandedOver;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the list of cut plans and their pieces. Plans are few; the pieces of one are written as a set. */
@Component
final class CutPlanProjection implements Projection {
    private final JdbcClient jdbc;

    CutPlanProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A piece and the reel it comes off, null if none does. */
    private record Cut(
            MaterialCuts of, PlannedPiece piece, @Nullable String reel) {}

    @Override
    public String name() {
        return "cut-plan";
    }

    @Override
    public List<String> tables() {
        return List.of("cut_plan", "cut_plan_piece");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(CutPlanEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((CutPlanEvent) stored.payload()) {
                case Drawn drawn -> insert(drawn);
                case Agreed agreed -> move(agreed, CutPlan.State.AGREED, agreed.by(), agreed.when(), null, null);
                case Dropped dropped ->
                    move(dropped, CutPlan.State.DROPPED, dropped.by(), dropped.when(), null, dropped.reason());
                case HandedOver over ->
                    move(over, CutPlan.State.HANDED_OVER, over.by(), over.when(), over.kitId(), null);
            }
        }
    }

    private void insert(Drawn drawn) {
        List<Cut> cuts =
                drawn.materials().stream().flatMap(CutPlanProjection::cuts).toList();
        int cut = (int) cuts.stream().filter(each -> each.reel() != null).count();
        jdbc.sql("""
                        INSERT INTO cut_plan (plan_id, depot_id, day, state, trees, pieces, uncut, loss_mm,
                                              least_loss_mm, proven, drawn_by, drawn_at, parts)
                        VALUES (?, ?, ?, 'drawn', ?, ?, ?, ?, ?, ?, ?, ?, CAST(? AS jsonb)) ON CONFLICT DO NOTHING""")
                .params(
                        drawn.planId().value(),
                        drawn.depot().value(),
                        drawn.day(),
                        drawn.trees().size(),
                        cut,
                        cuts.size() - cut,
                        drawn.materials().stream()
                                .mapToLong(each -> each.quality().loss().mm())
                                .sum(),
                        drawn.materials().stream()
                                .mapToLong(each -> each.quality().leastLoss().mm())
                                .sum(),
                        drawn.materials().stream()
                                .allMatch(each -> each.quality().proven()),
                        drawn.by().value(),
                        drawn.when().happened().atOffset(ZoneOffset.UTC),
                        PartsJson.write(new CutPlanView.Parts(
                                drawn.measure().name(),
                                drawn.use(),
                                drawn.policyVersion(),
                                drawn.trees(),
                                drawn.materials())))
                .update();
        insertPieces(drawn.planId(), cuts);
    }

    private void insertPieces(CutPlanId planId, List<Cut> cuts) {
        jdbc.sql("""
                        INSERT INTO cut_plan_piece (plan_id, material_code, tree_id, position, length_mm, reel_id)
                        SELECT ?, * FROM unnest(?::text[], ?::text[], ?::int[], ?::bigint[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        planId.value(),
                        cuts.stream().map(each -> each.of().material().value()).toArray(String[]::new),
                        cuts.stream().map(each -> each.piece().treeId().value()).toArray(String[]::new),
                        cuts.stream().map(each -> each.piece().position()).toArray(Integer[]::new),
                        cuts.stream().map(each -> each.piece().length().mm()).toArray(Long[]::new),
                        cuts.stream().map(Cut::reel).toArray(String[]::new))
                .update();
    }

    private static Stream<Cut> cuts(MaterialCuts of) {
        Stream<Cut> cut = of.reels().stream()
                .flatMap(reel -> reel.pieces().stream()
                        .map(piece -> new Cut(of, piece, reel.reelId().value())));
        Stream<Cut> uncut =
                Stream.concat(of.uncut().stream(), of.tooLong().stream()).map(piece -> new Cut(of, piece, null));
        return Stream.concat(cut, uncut);
    }

    private void move(
            CutPlanEvent event,
            CutPlan.State state,
            PersonId by,
            Occurred when,
            @Nullable KitId kit,
            @Nullable String reason) {
        jdbc.sql("""
                        UPDATE cut_plan SET state = :state, moved_by = :by, moved_at = :at, kit_id = :kit,
                                            reason = :reason
                        WHERE plan_id = :plan""")
                .param("state", state.words())
                .param("by", by.value())
                .param("at", when.happened().atOffset(ZoneOffset.UTC))
                .param("kit", kit == null ? null : kit.value())
                .param("reason", reason)
                .param("plan", event.planId().value())
                .update();
    }
}

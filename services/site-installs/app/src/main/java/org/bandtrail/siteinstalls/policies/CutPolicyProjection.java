package org.bandtrail.siteinstalls.policies;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.siteinstalls.policies.CutPolicyEvent.CutLengthsPublished;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the list of versions. Versions are few, so each event is one statement. */
@Component
final class CutPolicyProjection implements Projection {
    private final JdbcClient jdbc;

    CutPolicyProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "cut-policy";
    }

    @Override
    public List<String> tables() {
        return List.of("cut_policy");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(CutPolicyEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((CutPolicyEvent) stored.payload()) {
                case CutLengthsPublished published -> insert(published);
            }
        }
    }

    private void insert(CutLengthsPublished published) {
        CutPolicyView.Values values = CutPolicyView.Values.of(published.values());
        jdbc.sql("""
                        INSERT INTO cut_policy (version, valid_from, source, reason, published_by, published_at,
                            tape_overlap_mm, tape_tab_mm, tape_widest_mm,
                            mesh_extra_mm, mesh_least_stand_off_mm, mesh_widest_opening_mm,
                            fastener_spacing_mm, fastener_minimum,
                            height_usual_mm, height_lowest_mm, height_highest_mm,
                            girth_minimum_mm, girth_question_above_mm, girth_change_permille,
                            remove_after_days, late_after_days,
                            programme, pest, valid_until, bands_per_tree, band_width_mm, guard_type,
                            guard_wider_mm, guard_seam_mm, guard_closed_below)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?,
                            ?, ?, ?, ?, ?, ?, ?, ?, ?)
                        ON CONFLICT DO NOTHING""")
                .param(published.version())
                .param(published.validFrom())
                .param(published.source())
                .param(published.reason())
                .param(published.by().value())
                .param(published.when().recorded().atOffset(ZoneOffset.UTC))
                .param(values.tapeOverlapMm())
                .param(values.tapeTabMm())
                .param(values.tapeWidestMm())
                .param(values.meshExtraMm())
                .param(values.meshLeastStandOffMm())
                .param(values.meshWidestOpeningMm())
                .param(values.fastenerSpacingMm())
                .param(values.fastenerMinimum())
                .param(values.heightUsualMm())
                .param(values.heightLowestMm())
                .param(values.heightHighestMm())
                .param(values.girthMinimumMm())
                .param(values.girthQuestionAboveMm())
                .param(values.girthChangePermille())
                .param(values.removeAfterDays())
                .param(values.lateAfterDays())
                .param(published.scope().programme())
                .param(published.scope().pest())
                .param(published.validUntil())
                .param(values.bandsPerTree())
                .param(values.bandWidthMm())
                .param(values.guardType())
                .param(values.guardWiderMm())
                .param(values.guardSeamMm())
                .param(values.guardClosedBelow())
                .update();
    }
}

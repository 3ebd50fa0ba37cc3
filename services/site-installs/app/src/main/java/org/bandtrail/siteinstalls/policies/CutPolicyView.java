package org.bandtrail.siteinstalls.policies;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One version of the policy as people see it: one flat row, lengths in millimetres.
 *
 * @param version 1, 2, 3 in the order of publishing
 * @param programme for which it holds, null for all
 * @param pest EPPO code for which it holds, null for all
 * @param validFrom first day on which bands are cut by it
 * @param validUntil last such day, null for no end
 * @param source where the values come from
 * @param reason why they were chosen
 * @param by who published it
 * @param publishedAt when
 * @param values the values
 */
public record CutPolicyView(
        int version,
        @Nullable String programme,
        @Nullable String pest,
        LocalDate validFrom,
        @Nullable LocalDate validUntil,
        String source,
        String reason,
        String by,
        Instant publishedAt,
        Values values) {

    CutPolicyView(CutPolicyVersion version, String by, Instant publishedAt) {
        this(
                version.version(),
                version.scope().programme(),
                version.scope().pest(),
                version.validFrom(),
                version.validUntil(),
                version.source(),
                version.reason(),
                by,
                publishedAt,
                Values.of(version.values()));
    }

    /** The values of a version in millimetres, pieces, thousandths and days; see {@link CutLengths}. */
    public record Values(
            long tapeOverlapMm,
            long tapeTabMm,
            long tapeWidestMm,
            long meshExtraMm,
            long meshLeastStandOffMm,
            long meshWidestOpeningMm,
            long fastenerSpacingMm,
            long fastenerMinimum,
            long heightUsualMm,
            long heightLowestMm,
            long heightHighestMm,
            long girthMinimumMm,
            long girthQuestionAboveMm,
            int girthChangePermille,
            int removeAfterDays,
            int lateAfterDays,
            int bandsPerTree,
            long bandWidthMm,
            String guardType,
            long guardWiderMm,
            long guardSeamMm,
            boolean guardClosedBelow) {
        static Values of(CutLengths values) {
            return new Values(
                    values.tape().overlap().mm(),
                    values.tape().tab().mm(),
                    values.tape().widest().mm(),
                    values.mesh().extra().mm(),
                    values.mesh().leastStandOff().mm(),
                    values.mesh().widestOpening().mm(),
                    values.fasteners().spacing().mm(),
                    values.fasteners().minimum().count(),
                    values.height().usual().mm(),
                    values.height().lowest().mm(),
                    values.height().highest().mm(),
                    values.girth().minimum().mm(),
                    values.girth().questionAbove().mm(),
                    values.girth().changePermille(),
                    values.removeAfterDays(),
                    values.lateAfterDays(),
                    values.setup().bandsPerTree(),
                    values.setup().bandWidth().mm(),
                    values.setup().guard().word(),
                    values.setup().guardWider().mm(),
                    values.setup().seam().mm(),
                    values.setup().closedBelow());
        }
    }
}

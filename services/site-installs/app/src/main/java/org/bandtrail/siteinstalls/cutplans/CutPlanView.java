package org.bandtrail.siteinstalls.cutplans;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One cut plan as people see it in a list.
 *
 * @param planId its identity
 * @param depotId whose reels are cut
 * @param day on which the bands go up
 * @param state drawn, agreed, handed over or dropped
 * @param trees how many
 * @param pieces how many are cut
 * @param uncut how many the depot does not serve
 * @param lossMm scrap and blade together, in millimetres
 * @param leastLossMm what no plan can lose less than, in millimetres
 * @param proven whether no plan loses less
 * @param drawnBy who planned
 * @param drawnAt when
 * @param movedBy who agreed, dropped or handed over last, null if nobody
 * @param movedAt when, null likewise
 * @param kitId with which it went out, null if it did not
 * @param reason why it was dropped, null if it was not
 */
public record CutPlanView(
        String planId,
        String depotId,
        LocalDate day,
        String state,
        int trees,
        int pieces,
        int uncut,
        long lossMm,
        long leastLossMm,
        boolean proven,
        String drawnBy,
        Instant drawnAt,
        @Nullable String movedBy,
        @Nullable Instant movedAt,
        @Nullable String kitId,
        @Nullable String reason) {

    /**
     * What was drawn.
     *
     * @param measure the crew's measuring tape
     * @param use the kind of device, the programme and the pest
     * @param policyVersion the cut-length policy the lengths come from
     * @param trees in the order of the walk
     * @param materials one part for each material
     */
    public record Parts(
            String measure, CutUse use, int policyVersion, List<PlannedTree> trees, List<MaterialCuts> materials) {
        private static final CutUse STICKY_BAND = new CutUse("sticky-band", null, null);

        /** A row kept before plans knew devices is for sticky bands. */
        public Parts {
            use = Objects.requireNonNullElse(use, STICKY_BAND);
        }
    }

    /** A plan with all its parts. */
    public record Whole(CutPlanView plan, Parts parts) {}
}

package org.bandtrail.siteinstalls.workplans;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One work plan as people see it; parts as in {@link PlanContent}.
 *
 * @param state drafted, agreed, changed, done or called off
 * @param sites identities of the sites it goes to, in alphabetical order
 * @param trees how many
 * @param bands how many
 * @param changedAt when something was done to it last
 * @param changedBy by whom
 */
public record WorkPlanView(
        String planId,
        String state,
        LocalDate day,
        LocalDate lastDay,
        String crewId,
        String depotId,
        @Nullable String pest,
        @Nullable String programme,
        String device,
        @Nullable String tapeCode,
        @Nullable String meshCode,
        @Nullable String fastenerCode,
        @Nullable String otherCode,
        int policyVersion,
        @Nullable LocalDate putUpFrom,
        @Nullable LocalDate putUpUntil,
        String note,
        List<String> sites,
        int trees,
        int bands,
        Instant changedAt,
        String changedBy) {

    /** Whether its material is needed. */
    public boolean binding() {
        return state.equals("agreed") || state.equals("changed");
    }

    /**
     * A tree of the walk with what the register says of it now.
     *
     * @param step 1, 2, 3 in the order of the walk
     * @param tag on the tree, null if it is not in the register any more
     * @param species as people call it, null likewise
     * @param girthMm it was reckoned with
     * @param girthNowMm measured last, null if never
     * @param tapeMm length of each piece, 0 if nothing is cut from tape
     * @param meshMm length of each piece, 0 if nothing is cut from mesh
     * @param fasteners for the tree
     * @param others what else is counted for the tree
     * @param lat degrees, null if not known
     * @param lon degrees, null if not known
     * @param bandsUp bands that hang on it now
     * @param gone whether it is said to stand no more
     */
    public record TreeLine(
            int step,
            String treeId,
            String siteId,
            @Nullable String tag,
            @Nullable String species,
            long girthMm,
            @Nullable Long girthNowMm,
            int bands,
            long tapeMm,
            long meshMm,
            long fasteners,
            long others,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            long bandsUp,
            boolean gone) {}

    /**
     * One thing that happened to a plan.
     *
     * @param what in words
     * @param note the reason, may be empty
     */
    public record Step(String what, Instant happenedAt, String by, String note) {}

    /** A plan with its trees, its needs and its history, newest first. */
    public record Whole(
            @JsonUnwrapped WorkPlanView plan, List<TreeLine> walk, List<PlanNeed> needs, List<Step> history) {}
}

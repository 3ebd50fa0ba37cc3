package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What inspections says. Lengths in mm. */
public final class Visits {
    private Visits() {}

    /**
     * A band as a round sees it.
     *
     * @param dueAt next look, null for a band that is down
     * @param whyDueSentence why it is due, with its numbers
     */
    public record DueBand(
            String bandId,
            @Nullable String treeId,
            @Nullable String siteId,
            String state,
            @Nullable Instant fittedAt,
            @Nullable Instant lastVisitAt,
            @Nullable Instant dueAt,
            @Nullable String whyDue,
            @Nullable String whyDueSentence,
            @Nullable Instant mustRemoveBy,
            @Nullable Long saturationPercent,
            long catchTotal,
            boolean catchIsLowerBound,
            @Nullable String guardState,
            boolean bycatchOpen,
            @Nullable String tapeReelId,
            @Nullable Long tapeMm,
            @Nullable String meshReelId,
            @Nullable Long meshMm,
            @Nullable Long pieces) {}

    /** A band with its visits, newest first. */
    public record WholeBand(DueBand band, List<Visit> visits) {}

    /**
     * One look at one band.
     *
     * @param replaced kinds of material that were renewed
     * @param flags words for what somebody should know about it
     */
    public record Visit(
            String visitId,
            @Nullable Instant happenedAt,
            @Nullable Instant recordedAt,
            @Nullable String personId,
            String answer,
            @Nullable Long saturationPercent,
            @Nullable Map<String, Long> catches,
            boolean catchIsLowerBound,
            @Nullable String guardState,
            @Nullable Bycatch bycatch,
            @Nullable List<String> replaced,
            @Nullable List<String> flags) {}

    /** An animal that was not meant to be caught. */
    public record Bycatch(
            boolean seen,
            @Nullable String animal,
            @Nullable Boolean alive,
            @Nullable String action,
            @Nullable String handedTo) {}

    /** An animal found on a band; open until somebody tells what became of it. */
    public record Animal(
            String visitId,
            String bandId,
            @Nullable String treeId,
            @Nullable String siteId,
            @Nullable String personId,
            @Nullable Instant happenedAt,
            @Nullable String animal,
            @Nullable Boolean alive,
            @Nullable String action,
            @Nullable String handedTo,
            @Nullable String outcome,
            @Nullable String guardState) {}

    /** A visit or a teardown was stored; flags are words for what somebody should know about it. */
    public record Kept(@Nullable List<String> flags) {}

    /** A waste bag, what is in it now, and the load it left with. */
    public record Bag(
            String bagId,
            @Nullable Long tapeMm,
            @Nullable Long meshMm,
            @Nullable Long pieces,
            String state,
            @Nullable String loadId) {

        /** Tells whether it still waits for disposal. */
        public boolean waits() {
            return state.equals("open");
        }
    }
}

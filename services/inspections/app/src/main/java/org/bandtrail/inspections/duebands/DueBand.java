package org.bandtrail.inspections.duebands;

import java.time.Instant;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * One band as people see it: what is known, and when the next look is due and why.
 *
 * @param dueAt next look, null for a band that is down
 * @param whyDue reason in a word, see {@link DueReason}
 * @param whyDueSentence the same with its numbers
 * @param policyVersion version of the visit policy that says so
 * @param mustRemoveBy when it has to be off, null while no fitting is known
 */
public record DueBand(
        String bandId,
        @Nullable String treeId,
        @Nullable String siteId,
        String state,
        @Nullable Instant fittedAt,
        @Nullable Instant lastVisitAt,
        @Nullable String lastAnswer,
        @Nullable Instant dueAt,
        @Nullable String whyDue,
        @Nullable String whyDueSentence,
        int policyVersion,
        @Nullable Instant mustRemoveBy,
        @Nullable Integer saturationPercent,
        long visits,
        long catchTotal,
        boolean catchIsLowerBound,
        @Nullable String guardState,
        boolean bycatchOpen,
        @Nullable String tapeReelId,
        long tapeMm,
        @Nullable String meshReelId,
        long meshMm,
        long pieces) {
    /** Soonest first, bands without a next look last. */
    static final Comparator<DueBand> SOONEST_FIRST = Comparator.comparing(DueBand::orderKey);

    static DueBand of(BandRow row, VisitPolicy policy) {
        boolean down = "down".equals(row.state());
        Due due = down ? null : Due.of(row.standing(), policy);
        return new DueBand(
                row.bandId(),
                row.treeId(),
                row.siteId(),
                row.state(),
                row.fittedAt(),
                row.lastVisitAt(),
                row.lastAnswer() == null ? null : row.lastAnswer().spelt(),
                due == null ? null : due.at(),
                due == null ? null : due.reason().spelt(),
                due == null ? null : due.sentence(),
                policy.version(),
                down ? null : Due.mustRemoveBy(row.standing(), policy),
                row.saturationPercent(),
                row.visits(),
                row.catchTotal(),
                row.catchIsLowerBound(),
                row.guard() == null ? null : row.guard().spelt(),
                row.bycatchOpen(),
                row.tapeReelId(),
                row.tapeMm(),
                row.meshReelId(),
                row.meshMm(),
                row.pieces());
    }

    /** Where the row stands in the list; also the cursor of a page that ends with it. */
    String orderKey() {
        return (dueAt == null ? "9999" : dueAt.toString()) + "~" + bandId;
    }
}

package org.bandtrail.supplystock.counts;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.countrules.CountRules;
import org.bandtrail.supplystock.holdings.Place;

/** What happened to a count. */
public sealed interface CountEvent {
    /** The count it happened to. */
    CountId countId();

    /** Opened; the sheet is frozen. */
    @StoredAs("count.opened")
    @Revision("1")
    record Opened(CountId countId, Place scope, List<SheetLine> sheet, CountRules rules, PersonId by, Occurred occurred)
            implements CountEvent {}

    /**
     * A figure was entered.
     *
     * @param line the line of the sheet, or what was found
     * @param onSheet false for what was found and not on the sheet
     * @param round 1, 2, 3 ...
     * @param quantity millimetres or pieces
     * @param alone whether the same person had to count again because nobody else was there
     */
    @StoredAs("count.line-counted")
    @Revision("1")
    record LineCounted(
            CountId countId,
            SheetLine line,
            boolean onSheet,
            int round,
            long quantity,
            boolean alone,
            PersonId by,
            Occurred occurred)
            implements CountEvent {}

    /**
     * A round was finished.
     *
     * @param notThere lines without a figure that are not there
     * @param again lines to be counted again in the next round; empty if the count can be approved
     */
    @StoredAs("count.round-finished")
    @Revision("1")
    record RoundFinished(
            CountId countId,
            int round,
            List<SheetLine.Key> notThere,
            List<SheetLine.Key> again,
            PersonId by,
            Occurred occurred)
            implements CountEvent {}

    /** Somebody said why a line differs. */
    @StoredAs("count.difference-explained")
    @Revision("1")
    record DifferenceExplained(CountId countId, SheetLine.Key line, String reason, PersonId by, Occurred occurred)
            implements CountEvent {}

    /** Approved; these postings went to the reels and batches in the same work. */
    @StoredAs("count.approved")
    @Revision("1")
    record Approved(CountId countId, List<Posting> postings, PersonId by, Occurred occurred) implements CountEvent {}

    /** Given up; nothing was posted. */
    @StoredAs("count.cancelled")
    @Revision("1")
    record Cancelled(CountId countId, String reason, PersonId by, Occurred occurred) implements CountEvent {}
}

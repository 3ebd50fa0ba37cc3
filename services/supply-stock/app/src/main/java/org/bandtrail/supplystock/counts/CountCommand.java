package org.bandtrail.supplystock.counts;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.countrules.CountRules;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/** What people ask of a count, in the order of its life. Each says who asks and when. */
public sealed interface CountCommand {

    /**
     * Wish: begin to count a place. Refused if the identity is taken or the place is no depot or bin.
     *
     * @param scope a depot, with all its bins, or one bin
     * @param sheet what the books have there now
     * @param rules the rules this count keeps
     */
    record Open(
            @TargetAggregateIdentifier CountId countId,
            Place scope,
            List<SheetLine> sheet,
            CountRules rules,
            PersonId by,
            Occurred occurred)
            implements CountCommand {}

    /**
     * Wish: enter what was counted. A second figure in the same round replaces the first. Refused outside the place,
     * when it is not this line's turn, or if the same person counts again without need.
     *
     * @param place which bin, or null if there is only one place it can be
     * @param quantity millimetres or pieces, 0 if it is not there
     * @param found what the books know of it, for a line that is not on the sheet
     * @param alone whether nobody else is there who could count again
     */
    record Enter(
            @TargetAggregateIdentifier CountId countId,
            String holding,
            String id,
            @Nullable Place place,
            long quantity,
            SheetLine found,
            boolean alone,
            PersonId by,
            Occurred occurred)
            implements CountCommand {}

    /**
     * Wish: finish this round. Refused while lines have no figure.
     *
     * @param restNotThere whether everything on the sheet without a figure is not there
     */
    record Finish(@TargetAggregateIdentifier CountId countId, boolean restNotThere, PersonId by, Occurred occurred)
            implements CountCommand {}

    /** Wish: say why a line differs. Refused before all is counted or if it does not differ. */
    record Explain(
            @TargetAggregateIdentifier CountId countId,
            SheetLine.Key line,
            String reason,
            PersonId by,
            Occurred occurred)
            implements CountCommand {}

    /** Wish: approve; the differences are posted. Refused without reasons, or by a counter above the value. */
    record Approve(@TargetAggregateIdentifier CountId countId, PersonId by, Occurred occurred)
            implements CountCommand {}

    /** Wish: give the count up; nothing is posted. Refused once it is approved, or without a reason. */
    record Cancel(@TargetAggregateIdentifier CountId countId, String reason, PersonId by, Occurred occurred)
            implements CountCommand {}
}

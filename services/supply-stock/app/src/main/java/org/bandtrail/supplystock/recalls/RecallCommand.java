package org.bandtrail.supplystock.recalls;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.suppliers.SupplierId;

/** What people ask of a recall. */
public sealed interface RecallCommand {

    /** Wish: recall a supplier's lot. Refused if the identity is taken or the reason is missing. */
    record Start(
            @TargetAggregateIdentifier RecallId recallId,
            String lot,
            SupplierId supplier,
            String reason,
            PersonId by,
            Occurred occurred)
            implements RecallCommand {}

    /** Fact of the same work: this went aside. Refused if the recall is not open, so that the work is undone. */
    record RecordAside(
            @TargetAggregateIdentifier RecallId recallId, List<AsideLine> lines, PersonId by, Occurred occurred)
            implements RecallCommand {}

    /** Wish: lift the recall. Refused if it is not open or the reason is missing. */
    record Lift(@TargetAggregateIdentifier RecallId recallId, String reason, PersonId by, Occurred occurred)
            implements RecallCommand {}
}

package org.bandtrail.supplystock.tolerances;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to the policy. */
public sealed interface ToleranceEvent {
    /** Always {@link Tolerance#MATCH}. */
    String policy();

    /** These tolerances hold from now on. */
    @StoredAs("tolerance.set")
    @Revision("1")
    record ToleranceSet(
            String policy, Tolerances tolerances, String source, String reason, PersonId by, Occurred occurred)
            implements ToleranceEvent {}
}

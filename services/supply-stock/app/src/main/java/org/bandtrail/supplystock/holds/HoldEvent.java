package org.bandtrail.supplystock.holds;

import java.time.Instant;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to the holds on a reel or batch. */
public sealed interface HoldEvent {
    /** The reel or batch. */
    HeldId held();

    /**
     * Kept for a kit.
     *
     * @param quantity millimetres of a reel, pieces of a batch
     */
    @StoredAs("hold.placed")
    @Revision("1")
    record Placed(HeldId held, KitId kit, long quantity, Instant until, PersonId by, Occurred occurred)
            implements HoldEvent {}

    /** Kept for this kit no longer. */
    @StoredAs("hold.ended")
    @Revision("1")
    record Ended(HeldId held, KitId kit, Why why, PersonId by, Occurred occurred) implements HoldEvent {}

    /** Why a hold ended. */
    enum Why {
        /** Its kit went out. */
        HANDED_OUT,
        /** Somebody gave it free. */
        RELEASED,
        /** Its time was over when another kit wanted it. */
        LAPSED
    }
}

package org.bandtrail.supplystock.slittings;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;

/** What happened to a slitting. */
public sealed interface SlittingEvent {
    /** The slitting it happened to. */
    SlittingId slittingId();

    /** A length of a wide reel became strips. */
    @StoredAs("slitting.slit")
    @Revision("1")
    record Slit(
            SlittingId slittingId,
            ReelId reelId,
            MaterialCode material,
            Length length,
            Length width,
            List<Strip> strips,
            Length trim,
            PersonId by,
            Occurred occurred)
            implements SlittingEvent {}
}

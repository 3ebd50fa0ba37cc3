package org.bandtrail.supplystock.slittings;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;

/** What people ask of a slitting. */
public sealed interface SlittingCommand {

    /**
     * Wish: slit. Refused if the widths of strips and trim do not add up to the reel's, or a label comes twice.
     *
     * @param width across the wide reel
     * @param trim width of the edge that is thrown away, 0 or more
     */
    record Slit(
            @TargetAggregateIdentifier SlittingId slittingId,
            ReelId reelId,
            MaterialCode material,
            Length length,
            Length width,
            List<Strip> strips,
            Length trim,
            PersonId by,
            Occurred occurred)
            implements SlittingCommand {}
}

package org.bandtrail.supplystock.bins;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a bin. */
public sealed interface BinEvent {
    /** The bin it happened to. */
    BinId binId();

    /** Marked on a shelf of its depot. */
    @StoredAs("bin.marked")
    @Revision("1")
    record Marked(BinId binId, String words, PersonId by, Occurred occurred) implements BinEvent {}
}

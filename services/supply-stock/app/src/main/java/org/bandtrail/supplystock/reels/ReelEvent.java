package org.bandtrail.supplystock.reels;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Entry;

/** What happened to a reel. Every event carries its line in the books: moves, charges, person and times. */
public sealed interface ReelEvent {
    /** The reel it happened to. */
    ReelId reelId();

    /** What moved and which cost went where. */
    Entry entry();

    /** Received from the supplier at its actual cost. */
    @StoredAs("reel.received")
    @Revision("1")
    record Received(ReelId reelId, MaterialCode material, MaterialKind kind, Length length, Money cost, Entry entry)
            implements ReelEvent {}

    /** Given to a person as part of a kit. */
    @StoredAs("reel.handed-out")
    @Revision("1")
    record HandedOut(ReelId reelId, MaterialCode material, MaterialKind kind, KitId kit, PersonId person, Entry entry)
            implements ReelEvent {}

    /** A piece was cut and fitted to a tree. */
    @StoredAs("reel.length-fitted")
    @Revision("1")
    record LengthFitted(ReelId reelId, String fact, Entry entry) implements ReelEvent {}

    /** A piece came off a tree into a waste bag. */
    @StoredAs("reel.length-taken-down")
    @Revision("1")
    record LengthTakenDown(ReelId reelId, String fact, Entry entry) implements ReelEvent {}

    /** A sound piece of mesh came off a tree to be used again. */
    @StoredAs("reel.length-put-back-into-use")
    @Revision("1")
    record LengthPutBackIntoUse(ReelId reelId, String fact, Entry entry) implements ReelEvent {}

    /** A piece was spoilt on the job and went into a waste bag without being on a tree. */
    @StoredAs("reel.length-scrapped")
    @Revision("1")
    record LengthScrapped(ReelId reelId, String fact, Entry entry) implements ReelEvent {}

    /** Bagged pieces left with a disposal load. */
    @StoredAs("reel.length-disposed")
    @Revision("1")
    record LengthDisposed(ReelId reelId, String fact, Entry entry) implements ReelEvent {}

    /** A fact told late showed that what an earlier one moved is elsewhere in the field. */
    @StoredAs("reel.length-corrected")
    @Revision("1")
    record LengthCorrected(ReelId reelId, String fact, Entry entry) implements ReelEvent {}

    /** A person brought the reel back; the length on it was measured. */
    @StoredAs("reel.returned")
    @Revision("1")
    record Returned(ReelId reelId, PersonId person, Length measured, Entry entry) implements ReelEvent {}

    /** A missing or surplus length was written off by somebody who gave a reason. */
    @StoredAs("reel.length-written-off")
    @Revision("1")
    record LengthWrittenOff(ReelId reelId, String reason, Entry entry) implements ReelEvent {}

    /** The reel had more on it than the books knew. It adds to the length received and costs nothing. */
    @StoredAs("reel.length-found")
    @Revision("1")
    record LengthFound(ReelId reelId, String reason, Entry entry) implements ReelEvent {}
}

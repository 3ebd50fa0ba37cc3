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
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.StockMove;
import org.jspecify.annotations.Nullable;

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

    /** Moved between places of stock. */
    @StoredAs("reel.relocated")
    @Revision("1")
    record Relocated(
            ReelId reelId,
            StockMove what,
            @Nullable String reference,
            @Nullable String reason,
            Entry entry) implements ReelEvent {}

    /** Sent back to the supplier; it took its cost with it. */
    @StoredAs("reel.sent-back")
    @Revision("1")
    record SentBack(
            ReelId reelId,
            Length taken,
            Money cost,
            @Nullable String reference,
            @Nullable String reason,
            Entry entry) implements ReelEvent {}

    /** Arrived with a transfer or vehicle, as measured. */
    @StoredAs("reel.arrived")
    @Revision("1")
    record Arrived(ReelId reelId, Length measured, PersonId carrier, String reference, Entry entry)
            implements ReelEvent {}

    /** Its cost changed after the receipt; what was used already paid its part. */
    @StoredAs("reel.cost-changed")
    @Revision("1")
    record CostChanged(ReelId reelId, CostChange why, Money delta, String reference, Entry entry)
            implements ReelEvent {}

    /** Its stock was written down to what it is still worth. */
    @StoredAs("reel.written-down")
    @Revision("1")
    record WrittenDown(ReelId reelId, Money amount, String reason, Entry entry) implements ReelEvent {}

    /** A length of it was cut into narrower reels. */
    @StoredAs("reel.slit")
    @Revision("1")
    record Slit(ReelId reelId, String slitting, Length length, Entry entry) implements ReelEvent {}

    /** Made by slitting a wide reel, at its share of that reel's cost. */
    @StoredAs("reel.made-by-slitting")
    @Revision("1")
    record MadeBySlitting(
            ReelId reelId,
            MaterialCode material,
            MaterialKind kind,
            Length length,
            Money cost,
            String slitting,
            Entry entry)
            implements ReelEvent {}

    /** What was told wrong was put right by this move; if another reel was meant, it is named. */
    @StoredAs("reel.put-right")
    @Revision("1")
    record PutRight(ReelId reelId, @Nullable ReelId other, String reason, Entry entry) implements ReelEvent {}
}

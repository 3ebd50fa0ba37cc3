package org.bandtrail.supplystock.batches;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.StockMove;
import org.jspecify.annotations.Nullable;

/** What happened to a batch. Every event carries its line in the books: moves, charges, person and times. */
public sealed interface BatchEvent {
    /** The batch it happened to. */
    BatchId batchId();

    /** What moved and which cost went where. */
    Entry entry();

    /** Received from the supplier at its actual cost. */
    @StoredAs("batch.received")
    @Revision("1")
    record Received(BatchId batchId, MaterialCode material, MaterialKind kind, Pieces pieces, Money cost, Entry entry)
            implements BatchEvent {}

    /** Some pieces were given to a person as part of a kit. */
    @StoredAs("batch.handed-out")
    @Revision("1")
    record HandedOut(BatchId batchId, MaterialCode material, KitId kit, PersonId person, Entry entry)
            implements BatchEvent {}

    /** Pieces were fitted to a tree. */
    @StoredAs("batch.pieces-fitted")
    @Revision("1")
    record PiecesFitted(BatchId batchId, String fact, Entry entry) implements BatchEvent {}

    /** Pieces came off a tree into a waste bag. */
    @StoredAs("batch.pieces-taken-down")
    @Revision("1")
    record PiecesTakenDown(BatchId batchId, String fact, Entry entry) implements BatchEvent {}

    /** Sound pieces came off a tree to be used again. */
    @StoredAs("batch.pieces-put-back-into-use")
    @Revision("1")
    record PiecesPutBackIntoUse(BatchId batchId, String fact, Entry entry) implements BatchEvent {}

    /** Pieces were spoilt on the job and went into a waste bag without being on a tree. */
    @StoredAs("batch.pieces-scrapped")
    @Revision("1")
    record PiecesScrapped(BatchId batchId, String fact, Entry entry) implements BatchEvent {}

    /** Bagged pieces left with a disposal load. */
    @StoredAs("batch.pieces-disposed")
    @Revision("1")
    record PiecesDisposed(BatchId batchId, String fact, Entry entry) implements BatchEvent {}

    /** A fact told late showed that what an earlier one moved is elsewhere in the field. */
    @StoredAs("batch.pieces-corrected")
    @Revision("1")
    record PiecesCorrected(BatchId batchId, String fact, Entry entry) implements BatchEvent {}

    /** A person brought pieces back; they were counted. */
    @StoredAs("batch.returned")
    @Revision("1")
    record Returned(BatchId batchId, PersonId person, Pieces counted, Entry entry) implements BatchEvent {}

    /** Missing pieces were written off by somebody who gave a reason. */
    @StoredAs("batch.pieces-written-off")
    @Revision("1")
    record PiecesWrittenOff(BatchId batchId, String reason, Entry entry) implements BatchEvent {}

    /** There were more pieces than the books knew. They add to what was received and cost nothing. */
    @StoredAs("batch.pieces-found")
    @Revision("1")
    record PiecesFound(BatchId batchId, String reason, Entry entry) implements BatchEvent {}

    /** Moved between places of stock. */
    @StoredAs("batch.relocated")
    @Revision("1")
    record Relocated(
            BatchId batchId,
            StockMove what,
            @Nullable String reference,
            @Nullable String reason,
            Entry entry) implements BatchEvent {}

    /** Sent back to the supplier; it took its cost with it. */
    @StoredAs("batch.sent-back")
    @Revision("1")
    record SentBack(
            BatchId batchId,
            Pieces taken,
            Money cost,
            @Nullable String reference,
            @Nullable String reason,
            Entry entry) implements BatchEvent {}

    /** Arrived with a transfer or vehicle, as counted. */
    @StoredAs("batch.arrived")
    @Revision("1")
    record Arrived(BatchId batchId, Pieces counted, PersonId carrier, String reference, Entry entry)
            implements BatchEvent {}

    /** Its cost changed after the receipt; what was used already paid its part. */
    @StoredAs("batch.cost-changed")
    @Revision("1")
    record CostChanged(BatchId batchId, CostChange why, Money delta, String reference, Entry entry)
            implements BatchEvent {}

    /** Its stock was written down to what it is still worth. */
    @StoredAs("batch.written-down")
    @Revision("1")
    record WrittenDown(BatchId batchId, Money amount, String reason, Entry entry) implements BatchEvent {}

    /** What was told wrong was put right by this move; if another batch was meant, it is named. */
    @StoredAs("batch.put-right")
    @Revision("1")
    record PutRight(BatchId batchId, @Nullable BatchId other, String reason, Entry entry) implements BatchEvent {}
}

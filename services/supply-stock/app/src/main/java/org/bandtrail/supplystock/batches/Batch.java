package org.bandtrail.supplystock.batches;

import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.FieldWork;
import org.bandtrail.supplystock.holdings.Holding;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockRules;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a batch; no other file has any. The field may use a batch before its receipt is in the books: then
 * material and kind are unknown and nothing was bought yet.
 *
 * @param material what is in it, null until received
 * @param kind always fasteners, null until received
 * @param currency ISO 4217 code of what it cost, null until received
 * @param holding quantities in pieces, cost, whereabouts
 */
public record Batch(
        @Nullable MaterialCode material,
        @Nullable MaterialKind kind,
        @Nullable String currency,
        Holding holding) {
    /** A batch the books have never heard of. */
    public static final Batch UNKNOWN = new Batch(null, null, null, Holding.NOTHING);

    /**
     * What a command makes happen.
     *
     * @return the events in order; empty if a fact changes nothing
     * @throws BatchRefused if a wish cannot be granted
     */
    public List<BatchEvent> decide(BatchCommand command) {
        return switch (command) {
            case BatchCommand.Receive receive -> receive(receive);
            case BatchCommand.HandOut handOut -> handOut(handOut);
            case BatchCommand.RecordFact fact -> record(fact);
            case BatchCommand.Return back -> returned(back);
            case BatchCommand.Settle settle -> settle(settle);
            case BatchCommand.OnShelf onShelf -> new BatchOnShelf(this).decide(onShelf);
        };
    }

    private List<BatchEvent> receive(BatchCommand.Receive receive) {
        if (material != null) {
            throw new BatchRefused.BatchAlreadyReceived(receive.batchId(), Pieces.of(holding.bought()));
        }
        if (!receive.pieces().isPositive()) {
            throw new BatchRefused.BatchWithoutPieces(receive.batchId(), receive.pieces());
        }
        if (receive.kind().onReels()) {
            throw new BatchRefused.NotCounted(receive.batchId(), receive.kind());
        }
        Move receipt = new Move(Place.SUPPLIER, receive.into(), receive.pieces().count());
        return List.of(new BatchEvent.Received(
                receive.batchId(),
                receive.material(),
                receive.kind(),
                receive.pieces(),
                receive.cost(),
                holding.receiptEntry(receipt, receive.cost().minor(), receive.by(), receive.occurred())));
    }

    private List<BatchEvent> handOut(BatchCommand.HandOut handOut) {
        long wanted = handOut.pieces().count();
        if (wanted <= 0) {
            throw new BatchRefused.NothingWanted(handOut.batchId(), handOut.pieces());
        }
        List<Move> all =
                new BatchOnShelf(this).rules(handOut.batchId()).outOf(handOut.depot(), Place.crew(handOut.person()));
        long there = all.stream().mapToLong(Move::quantity).sum();
        if (there >= wanted && material == null) {
            throw new BatchRefused.ReceiptMissing(handOut.batchId());
        }
        if (there < wanted || material == null) {
            throw new BatchRefused.TooFewInDepot(
                    handOut.batchId(), handOut.depot(), handOut.pieces(), Pieces.of(there));
        }
        return List.of(new BatchEvent.HandedOut(
                handOut.batchId(),
                material,
                handOut.kit(),
                handOut.person(),
                new Entry(StockRules.first(all, wanted), List.of(), handOut.by(), handOut.occurred())));
    }

    private List<BatchEvent> record(BatchCommand.RecordFact told) {
        BatchId batch = told.batchId();
        Entry entry = holding.fieldEntry(
                told.source(), told.target(), told.pieces().count(), told.site(), told.by(), told.occurred());
        return List.of(
                switch (FieldWork.between(told.source(), told.target())) {
                    case FITTED -> new BatchEvent.PiecesFitted(batch, told.fact(), entry);
                    case TAKEN_DOWN -> new BatchEvent.PiecesTakenDown(batch, told.fact(), entry);
                    case PUT_BACK_INTO_USE -> new BatchEvent.PiecesPutBackIntoUse(batch, told.fact(), entry);
                    case SCRAPPED -> new BatchEvent.PiecesScrapped(batch, told.fact(), entry);
                    case DISPOSED -> new BatchEvent.PiecesDisposed(batch, told.fact(), entry);
                    case CORRECTED -> new BatchEvent.PiecesCorrected(batch, told.fact(), entry);
                });
    }

    private List<BatchEvent> returned(BatchCommand.Return back) {
        List<Move> moves = holding.backToDepot(
                back.person(), Place.depot(back.depot()), back.counted().count());
        if (moves.isEmpty()) {
            return List.of();
        }
        return List.of(new BatchEvent.Returned(
                back.batchId(),
                back.person(),
                back.counted(),
                new Entry(moves, List.of(), back.by(), back.occurred())));
    }

    private List<BatchEvent> settle(BatchCommand.Settle settle) {
        Place place = settle.place();
        if (!holding.disagrees(place)) {
            throw new BatchRefused.NothingToSettle(settle.batchId(), place, Pieces.of(holding.at(place)));
        }
        if (settle.reason().isBlank()) {
            throw new BatchRefused.ReasonMissing(settle.batchId());
        }
        Move move = holding.settling(place);
        Entry entry = holding.entry(List.of(move), Charge.WRITTEN_OFF, settle.by(), settle.occurred());
        return List.of(
                move.target().equals(Place.WRITTEN_OFF)
                        ? new BatchEvent.PiecesWrittenOff(settle.batchId(), settle.reason(), entry)
                        : new BatchEvent.PiecesFound(settle.batchId(), settle.reason(), entry));
    }

    /**
     * The batch after an event.
     *
     * @throws IllegalStateException if the event cannot have happened to this batch
     */
    public Batch evolve(BatchEvent event) {
        return switch (event) {
            case BatchEvent.Received received ->
                received(
                        received.batchId(),
                        received.material(),
                        received.kind(),
                        received.pieces(),
                        received.cost(),
                        received.entry());
            case BatchEvent.SentBack back ->
                moved(back.entry()).revalued(-back.taken().count(), -back.cost().minor(), 0);
            case BatchEvent.CostChanged changed ->
                moved(changed.entry()).revalued(0, changed.delta().minor(), 0);
            case BatchEvent.WrittenDown down ->
                moved(down.entry()).revalued(0, 0, down.amount().minor());
            case BatchEvent.Relocated _,
                    BatchEvent.Arrived _,
                    BatchEvent.HandedOut _,
                    BatchEvent.PiecesFitted _,
                    BatchEvent.PiecesTakenDown _,
                    BatchEvent.PiecesPutBackIntoUse _,
                    BatchEvent.PiecesScrapped _,
                    BatchEvent.PiecesCorrected _,
                    BatchEvent.PiecesDisposed _,
                    BatchEvent.Returned _,
                    BatchEvent.PiecesWrittenOff _,
                    BatchEvent.PiecesFound _,
                    BatchEvent.PutRight _ -> moved(event.entry());
        };
    }

    private Batch received(
            BatchId batch, MaterialCode what, MaterialKind sort, Pieces pieces, Money cost, Entry entry) {
        if (material != null) {
            throw new IllegalStateException("Batch %s was received twice in its own history.".formatted(batch));
        }
        Holding known = holding.bought(pieces.count(), cost.minor()).after(entry);
        return new Batch(what, sort, cost.currency(), known);
    }

    private Batch moved(Entry entry) {
        return new Batch(material, kind, currency, holding.after(entry));
    }

    private Batch revalued(long boughtDelta, long costDelta, long writtenDown) {
        return new Batch(material, kind, currency, holding.revalued(boughtDelta, costDelta, writtenDown));
    }
}

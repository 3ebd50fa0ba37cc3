package org.bandtrail.supplystock.batches;

import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Aside;
import org.bandtrail.supplystock.holdings.Corrections;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.holdings.StockRules;

/**
 * The rules of a batch while no crew has it: what depots, vehicles and the books do with it. They are {@link StockRules}, put
 * into the events of a batch.
 */
record BatchOnShelf(Batch batch) {

    List<BatchEvent> decide(BatchCommand.OnShelf command) {
        return switch (command) {
            case BatchCommand.Relocate wish -> relocate(wish);
            case BatchCommand.AsFarAsThere recall -> asFarAsThere(recall);
            case BatchCommand.Arrive fact -> arrive(fact);
            case BatchCommand.Adjust wish -> adjust(wish);
            case BatchCommand.PutRight wish -> putRight(wish);
            case BatchCommand.ChangeCost wish ->
                List.of(new BatchEvent.CostChanged(
                        wish.batchId(),
                        wish.why(),
                        wish.delta(),
                        wish.reference(),
                        rules(wish.batchId()).changeCost(wish.delta(), wish.by(), wish.occurred())));
            case BatchCommand.WriteDown wish ->
                List.of(new BatchEvent.WrittenDown(
                        wish.batchId(),
                        wish.amount(),
                        wish.reason(),
                        rules(wish.batchId()).writeDown(wish.amount(), wish.reason(), wish.by(), wish.occurred())));
        };
    }

    StockRules rules(Object id) {
        return new StockRules("Batch [" + id + "]", Pieces::of, batch.holding(), batch.currency());
    }

    private List<BatchEvent> relocate(BatchCommand.Relocate wish) {
        StockRules rules = rules(wish.batchId());
        Long quantity = wish.pieces() == null ? null : wish.pieces().count();
        Entry entry = rules.relocate(wish.what(), wish.source(), wish.target(), quantity, wish.by(), wish.occurred());
        if (wish.what() != StockMove.SENT_BACK) {
            return List.of(
                    new BatchEvent.Relocated(wish.batchId(), wish.what(), wish.reference(), wish.reason(), entry));
        }
        String currency = batch.currency();
        if (currency == null) {
            throw new BatchRefused.ReceiptMissing(wish.batchId());
        }
        long sent = entry.moves().getFirst().quantity();
        return List.of(new BatchEvent.SentBack(
                wish.batchId(),
                Pieces.of(rules.boughtOfSentBack(sent)),
                Money.of(rules.costOfSentBack(sent), currency),
                wish.reference(),
                wish.reason(),
                entry));
    }

    private List<BatchEvent> asFarAsThere(BatchCommand.AsFarAsThere recall) {
        Aside order = recall.order();
        List<Move> moves = order.moves(rules(recall.batchId()));
        Entry entry = new Entry(moves, List.of(), recall.by(), recall.occurred());
        return moves.isEmpty()
                ? List.of()
                : List.of(new BatchEvent.Relocated(
                        recall.batchId(), order.what(), order.reference(), order.reason(), entry));
    }

    private List<BatchEvent> arrive(BatchCommand.Arrive fact) {
        List<Move> moves = rules(fact.batchId())
                .arrive(fact.source(), fact.target(), fact.counted().count(), fact.carrier());
        return moves.isEmpty()
                ? List.of()
                : List.of(new BatchEvent.Arrived(
                        fact.batchId(),
                        fact.counted(),
                        fact.carrier(),
                        fact.reference(),
                        new Entry(moves, List.of(), fact.by(), fact.occurred())));
    }

    private List<BatchEvent> adjust(BatchCommand.Adjust wish) {
        Entry entry = rules(wish.batchId())
                .adjust(wish.place(), wish.difference(), wish.reason(), wish.by(), wish.occurred());
        String why = wish.reference() + ": " + wish.reason();
        return List.of(
                entry.moves().getFirst().target().equals(Place.WRITTEN_OFF)
                        ? new BatchEvent.PiecesWrittenOff(wish.batchId(), why, entry)
                        : new BatchEvent.PiecesFound(wish.batchId(), why, entry));
    }

    private List<BatchEvent> putRight(BatchCommand.PutRight wish) {
        BatchId other = wish.other();
        Entry entry = new Corrections(rules(wish.batchId()))
                .entry(
                        wish.source(),
                        wish.target(),
                        wish.pieces().count(),
                        other == null ? null : other.value(),
                        wish.site(),
                        wish.reason(),
                        wish.by(),
                        wish.occurred());
        return List.of(new BatchEvent.PutRight(wish.batchId(), other, wish.reason(), entry));
    }
}

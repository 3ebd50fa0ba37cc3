package org.bandtrail.supplystock.reels;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Aside;
import org.bandtrail.supplystock.holdings.Corrections;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.holdings.StockRules;

/**
 * The rules of a reel while no crew has it: what depots, vehicles and the books do with it. They are {@link StockRules}, put
 * into the events of a reel.
 */
record ReelOnShelf(Reel reel) {

    List<ReelEvent> decide(ReelCommand.OnShelf command) {
        return switch (command) {
            case ReelCommand.Relocate wish -> relocate(wish);
            case ReelCommand.AsFarAsThere recall -> asFarAsThere(recall);
            case ReelCommand.Arrive fact -> arrive(fact);
            case ReelCommand.Adjust wish -> adjust(wish);
            case ReelCommand.PutRight wish -> putRight(wish);
            case ReelCommand.ChangeCost wish ->
                List.of(new ReelEvent.CostChanged(
                        wish.reelId(),
                        wish.why(),
                        wish.delta(),
                        wish.reference(),
                        rules(wish.reelId()).changeCost(wish.delta(), wish.by(), wish.occurred())));
            case ReelCommand.WriteDown wish ->
                List.of(new ReelEvent.WrittenDown(
                        wish.reelId(),
                        wish.amount(),
                        wish.reason(),
                        rules(wish.reelId()).writeDown(wish.amount(), wish.reason(), wish.by(), wish.occurred())));
            case ReelCommand.Slit wish ->
                List.of(new ReelEvent.Slit(
                        wish.reelId(),
                        wish.slitting(),
                        wish.length(),
                        rules(wish.reelId())
                                .slit(
                                        wish.slitting(),
                                        wish.source(),
                                        wish.length().mm(),
                                        wish.by(),
                                        wish.occurred())));
            case ReelCommand.MakeBySlitting wish -> makeBySlitting(wish);
        };
    }

    StockRules rules(Object id) {
        return new StockRules("Reel [" + id + "]", Length::ofMm, reel.holding(), reel.currency());
    }

    private List<ReelEvent> relocate(ReelCommand.Relocate wish) {
        StockRules rules = rules(wish.reelId());
        Long quantity = wish.length() == null ? null : wish.length().mm();
        Entry entry = rules.relocate(wish.what(), wish.source(), wish.target(), quantity, wish.by(), wish.occurred());
        if (wish.what() != StockMove.SENT_BACK) {
            return List.of(new ReelEvent.Relocated(wish.reelId(), wish.what(), wish.reference(), wish.reason(), entry));
        }
        String currency = reel.currency();
        if (currency == null) {
            throw new ReelRefused.ReceiptMissing(wish.reelId());
        }
        long sent = entry.moves().getFirst().quantity();
        return List.of(new ReelEvent.SentBack(
                wish.reelId(),
                Length.ofMm(rules.boughtOfSentBack(sent)),
                Money.of(rules.costOfSentBack(sent), currency),
                wish.reference(),
                wish.reason(),
                entry));
    }

    private List<ReelEvent> asFarAsThere(ReelCommand.AsFarAsThere recall) {
        Aside order = recall.order();
        List<Move> moves = order.moves(rules(recall.reelId()));
        Entry entry = new Entry(moves, List.of(), recall.by(), recall.occurred());
        return moves.isEmpty()
                ? List.of()
                : List.of(new ReelEvent.Relocated(
                        recall.reelId(), order.what(), order.reference(), order.reason(), entry));
    }

    private List<ReelEvent> arrive(ReelCommand.Arrive fact) {
        List<Move> moves = rules(fact.reelId())
                .arrive(fact.source(), fact.target(), fact.measured().mm(), fact.carrier());
        return moves.isEmpty()
                ? List.of()
                : List.of(new ReelEvent.Arrived(
                        fact.reelId(),
                        fact.measured(),
                        fact.carrier(),
                        fact.reference(),
                        new Entry(moves, List.of(), fact.by(), fact.occurred())));
    }

    private List<ReelEvent> adjust(ReelCommand.Adjust wish) {
        Entry entry =
                rules(wish.reelId()).adjust(wish.place(), wish.difference(), wish.reason(), wish.by(), wish.occurred());
        String why = wish.reference() + ": " + wish.reason();
        return List.of(
                entry.moves().getFirst().target().equals(Place.WRITTEN_OFF)
                        ? new ReelEvent.LengthWrittenOff(wish.reelId(), why, entry)
                        : new ReelEvent.LengthFound(wish.reelId(), why, entry));
    }

    private List<ReelEvent> makeBySlitting(ReelCommand.MakeBySlitting wish) {
        reel.requireNew(wish.reelId(), wish.kind(), wish.length());
        Move strip =
                new Move(Place.slit(wish.slitting()), wish.into(), wish.length().mm());
        return List.of(new ReelEvent.MadeBySlitting(
                wish.reelId(),
                wish.material(),
                wish.kind(),
                wish.length(),
                wish.cost(),
                wish.slitting(),
                reel.holding().receiptEntry(strip, wish.cost().minor(), wish.by(), wish.occurred())));
    }

    private List<ReelEvent> putRight(ReelCommand.PutRight wish) {
        ReelId other = wish.other();
        Entry entry = new Corrections(rules(wish.reelId()))
                .entry(
                        wish.source(),
                        wish.target(),
                        wish.length().mm(),
                        other == null ? null : other.value(),
                        wish.site(),
                        wish.reason(),
                        wish.by(),
                        wish.occurred());
        return List.of(new ReelEvent.PutRight(wish.reelId(), other, wish.reason(), entry));
    }
}

package org.bandtrail.supplystock.ledger;

import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Line.Bought;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.ledger.Fact.Cost;
import org.bandtrail.supplystock.ledger.Fact.Key;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;

/** Reads the events of reels and batches as facts of the ledger; an event nobody thought of does not compile. */
final class Facts {
    private final long position;
    private final Key holding;
    private final Entry entry;

    private Facts(long position, Key holding, Entry entry) {
        this.position = position;
        this.holding = holding;
        this.entry = entry;
    }

    static Fact of(long position, ReelEvent event) {
        return new Facts(position, new Key("reel", event.reelId().value()), event.entry()).reel(event);
    }

    static Fact of(long position, BatchEvent event) {
        return new Facts(position, new Key("batch", event.batchId().value()), event.entry()).batch(event);
    }

    private Fact reel(ReelEvent event) {
        return switch (event) {
            case ReelEvent.Received in ->
                received(
                        "received",
                        null,
                        new Bought(in.material(), in.kind(), in.length().mm(), in.cost()));
            case ReelEvent.MadeBySlitting in ->
                received(
                        "slit from a wider reel",
                        "slitting " + in.slitting(),
                        new Bought(in.material(), in.kind(), in.length().mm(), in.cost()));
            case ReelEvent.Slit slit -> moved("slit into narrower reels", "slitting " + slit.slitting());
            case ReelEvent.Relocated to -> moved(to.what().word(), note(to.reference(), to.reason()));
            case ReelEvent.Arrived arrived -> moved("arrived", "measured " + arrived.measured());
            case ReelEvent.SentBack back ->
                moved(StockMove.SENT_BACK.word(), note(back.reference(), back.reason()))
                        .costing(Cost.SENT_BACK, -back.cost().minor());
            case ReelEvent.CostChanged changed ->
                costChanged(changed.why(), changed.reference(), changed.delta().minor());
            case ReelEvent.WrittenDown down ->
                writtenDown(down.reason(), down.amount().minor());
            case ReelEvent.HandedOut out -> moved("handed out", "kit " + out.kit());
            case ReelEvent.LengthFitted fitted -> moved("fitted", fitted.fact());
            case ReelEvent.LengthTakenDown down -> moved("taken down", down.fact());
            case ReelEvent.LengthPutBackIntoUse back -> moved("put back into use", back.fact());
            case ReelEvent.LengthScrapped scrapped -> moved("scrapped", scrapped.fact());
            case ReelEvent.LengthDisposed disposed -> moved("disposed", disposed.fact());
            case ReelEvent.Returned back -> moved("returned", "measured " + back.measured());
            case ReelEvent.LengthCorrected corrected -> adjusting("corrected", corrected.fact());
            case ReelEvent.LengthWrittenOff off -> adjusting("written off", off.reason());
            case ReelEvent.LengthFound found -> adjusting("found", found.reason());
            case ReelEvent.PutRight right -> adjusting("put right", right.reason());
        };
    }

    private Fact batch(BatchEvent event) {
        return switch (event) {
            case BatchEvent.Received in ->
                received(
                        "received",
                        null,
                        new Bought(in.material(), in.kind(), in.pieces().count(), in.cost()));
            case BatchEvent.Relocated to -> moved(to.what().word(), note(to.reference(), to.reason()));
            case BatchEvent.Arrived arrived -> moved("arrived", "counted " + arrived.counted());
            case BatchEvent.SentBack back ->
                moved(StockMove.SENT_BACK.word(), note(back.reference(), back.reason()))
                        .costing(Cost.SENT_BACK, -back.cost().minor());
            case BatchEvent.CostChanged changed ->
                costChanged(changed.why(), changed.reference(), changed.delta().minor());
            case BatchEvent.WrittenDown down ->
                writtenDown(down.reason(), down.amount().minor());
            case BatchEvent.HandedOut out -> moved("handed out", "kit " + out.kit());
            case BatchEvent.PiecesFitted fitted -> moved("fitted", fitted.fact());
            case BatchEvent.PiecesTakenDown down -> moved("taken down", down.fact());
            case BatchEvent.PiecesPutBackIntoUse back -> moved("put back into use", back.fact());
            case BatchEvent.PiecesScrapped scrapped -> moved("scrapped", scrapped.fact());
            case BatchEvent.PiecesDisposed disposed -> moved("disposed", disposed.fact());
            case BatchEvent.Returned back -> moved("returned", "counted " + back.counted());
            case BatchEvent.PiecesCorrected corrected -> adjusting("corrected", corrected.fact());
            case BatchEvent.PiecesWrittenOff off -> adjusting("written off", off.reason());
            case BatchEvent.PiecesFound found -> adjusting("found", found.reason());
            case BatchEvent.PutRight right -> adjusting("put right", right.reason());
        };
    }

    private Fact received(String what, @Nullable String note, Bought bought) {
        return Fact.received(position, holding, what, note, entry, bought);
    }

    private Fact moved(String what, @Nullable String note) {
        return Fact.moved(position, holding, what, note, entry);
    }

    private Fact adjusting(String what, @Nullable String note) {
        return Fact.adjusting(position, holding, what, note, entry);
    }

    private Fact costChanged(CostChange why, String reference, long delta) {
        return adjusting(why.word(), reference)
                .costing(why == CostChange.FROM_WIDE_REEL ? Cost.CHANGED_FROM_WIDE_REEL : Cost.CHANGED, delta);
    }

    private Fact writtenDown(String reason, long amount) {
        return adjusting("written down", reason).costing(Cost.WRITTEN_DOWN, amount);
    }

    private static @Nullable String note(@Nullable String reference, @Nullable String reason) {
        return reference == null ? reason : reason == null ? reference : reference + ": " + reason;
    }
}

package org.bandtrail.supplystock.reels;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.FieldWork;
import org.bandtrail.supplystock.holdings.Holding;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a reel; no other file has any. The field may use a reel before its receipt is in the books: then
 * material and kind are unknown and nothing was bought yet.
 *
 * @param material what is on it, null until received
 * @param kind tape or mesh, null until received
 * @param currency ISO 4217 code of what it cost, null until received
 * @param holding quantities in millimetres, cost, whereabouts
 */
public record Reel(
        @Nullable MaterialCode material,
        @Nullable MaterialKind kind,
        @Nullable String currency,
        Holding holding) {
    /** A reel the books have never heard of. */
    public static final Reel UNKNOWN = new Reel(null, null, null, Holding.NOTHING);

    /**
     * What a command makes happen.
     *
     * @return the events in order; empty if a fact changes nothing
     * @throws ReelRefused if a wish cannot be granted
     */
    public List<ReelEvent> decide(ReelCommand command) {
        return switch (command) {
            case ReelCommand.Receive receive -> receive(receive);
            case ReelCommand.HandOut handOut -> handOut(handOut);
            case ReelCommand.RecordFact fact -> record(fact);
            case ReelCommand.Return back -> returned(back);
            case ReelCommand.Settle settle -> settle(settle);
            case ReelCommand.OnShelf onShelf -> new ReelOnShelf(this).decide(onShelf);
        };
    }

    private List<ReelEvent> receive(ReelCommand.Receive receive) {
        requireNew(receive.reelId(), receive.kind(), receive.length());
        Move receipt = new Move(Place.SUPPLIER, receive.into(), receive.length().mm());
        return List.of(new ReelEvent.Received(
                receive.reelId(),
                receive.material(),
                receive.kind(),
                receive.length(),
                receive.cost(),
                holding.receiptEntry(receipt, receive.cost().minor(), receive.by(), receive.occurred())));
    }

    void requireNew(ReelId reel, MaterialKind what, Length length) {
        if (material != null) {
            throw new ReelRefused.ReelAlreadyReceived(reel, Length.ofMm(holding.bought()));
        }
        if (!length.isPositive()) {
            throw new ReelRefused.ReelWithoutLength(reel, length);
        }
        if (!what.onReels()) {
            throw new ReelRefused.NotOnReels(reel, what);
        }
    }

    private List<ReelEvent> handOut(ReelCommand.HandOut handOut) {
        List<Move> moves =
                new ReelOnShelf(this).rules(handOut.reelId()).outOf(handOut.depot(), Place.crew(handOut.person()));
        if (!moves.isEmpty() && (material == null || kind == null)) {
            throw new ReelRefused.ReceiptMissing(handOut.reelId());
        }
        if (moves.isEmpty() || material == null || kind == null) {
            throw new ReelRefused.ReelNotInDepot(
                    handOut.reelId(), handOut.depot(), holding.whereabouts().inWords(Length::ofMm));
        }
        return List.of(new ReelEvent.HandedOut(
                handOut.reelId(),
                material,
                kind,
                handOut.kit(),
                handOut.person(),
                new Entry(moves, List.of(), handOut.by(), handOut.occurred())));
    }

    private List<ReelEvent> record(ReelCommand.RecordFact told) {
        ReelId reel = told.reelId();
        Entry entry = holding.fieldEntry(
                told.source(), told.target(), told.length().mm(), told.site(), told.by(), told.occurred());
        return List.of(
                switch (FieldWork.between(told.source(), told.target())) {
                    case FITTED -> new ReelEvent.LengthFitted(reel, told.fact(), entry);
                    case TAKEN_DOWN -> new ReelEvent.LengthTakenDown(reel, told.fact(), entry);
                    case PUT_BACK_INTO_USE -> new ReelEvent.LengthPutBackIntoUse(reel, told.fact(), entry);
                    case SCRAPPED -> new ReelEvent.LengthScrapped(reel, told.fact(), entry);
                    case DISPOSED -> new ReelEvent.LengthDisposed(reel, told.fact(), entry);
                    case CORRECTED -> new ReelEvent.LengthCorrected(reel, told.fact(), entry);
                });
    }

    private List<ReelEvent> returned(ReelCommand.Return back) {
        List<Move> moves = holding.backToDepot(
                back.person(), Place.depot(back.depot()), back.measured().mm());
        if (moves.isEmpty()) {
            return List.of();
        }
        return List.of(new ReelEvent.Returned(
                back.reelId(),
                back.person(),
                back.measured(),
                new Entry(moves, List.of(), back.by(), back.occurred())));
    }

    private List<ReelEvent> settle(ReelCommand.Settle settle) {
        Place place = settle.place();
        if (!holding.disagrees(place)) {
            throw new ReelRefused.NothingToSettle(settle.reelId(), place, Length.ofMm(holding.at(place)));
        }
        if (settle.reason().isBlank()) {
            throw new ReelRefused.ReasonMissing(settle.reelId());
        }
        Move move = holding.settling(place);
        Entry entry = holding.entry(List.of(move), Charge.WRITTEN_OFF, settle.by(), settle.occurred());
        return List.of(
                move.target().equals(Place.WRITTEN_OFF)
                        ? new ReelEvent.LengthWrittenOff(settle.reelId(), settle.reason(), entry)
                        : new ReelEvent.LengthFound(settle.reelId(), settle.reason(), entry));
    }

    /**
     * The reel after an event.
     *
     * @throws IllegalStateException if the event cannot have happened to this reel
     */
    public Reel evolve(ReelEvent event) {
        return switch (event) {
            case ReelEvent.Received received ->
                received(
                        received.reelId(),
                        received.material(),
                        received.kind(),
                        received.length(),
                        received.cost(),
                        received.entry());
            case ReelEvent.MadeBySlitting made ->
                received(made.reelId(), made.material(), made.kind(), made.length(), made.cost(), made.entry());
            case ReelEvent.SentBack back ->
                moved(back.entry()).revalued(-back.taken().mm(), -back.cost().minor(), 0);
            case ReelEvent.CostChanged changed ->
                moved(changed.entry()).revalued(0, changed.delta().minor(), 0);
            case ReelEvent.WrittenDown down ->
                moved(down.entry()).revalued(0, 0, down.amount().minor());
            case ReelEvent.Slit _,
                    ReelEvent.Relocated _,
                    ReelEvent.Arrived _,
                    ReelEvent.HandedOut _,
                    ReelEvent.LengthFitted _,
                    ReelEvent.LengthTakenDown _,
                    ReelEvent.LengthPutBackIntoUse _,
                    ReelEvent.LengthScrapped _,
                    ReelEvent.LengthCorrected _,
                    ReelEvent.LengthDisposed _,
                    ReelEvent.Returned _,
                    ReelEvent.LengthWrittenOff _,
                    ReelEvent.LengthFound _,
                    ReelEvent.PutRight _ -> moved(event.entry());
        };
    }

    private Reel received(ReelId reel, MaterialCode what, MaterialKind sort, Length length, Money cost, Entry entry) {
        if (material != null) {
            throw new IllegalStateException("Reel %s was received twice in its own history.".formatted(reel));
        }
        Holding known = holding.bought(length.mm(), cost.minor()).after(entry);
        return new Reel(what, sort, cost.currency(), known);
    }

    private Reel moved(Entry entry) {
        return new Reel(material, kind, currency, holding.after(entry));
    }

    private Reel revalued(long boughtDelta, long costDelta, long writtenDown) {
        return new Reel(material, kind, currency, holding.revalued(boughtDelta, costDelta, writtenDown));
    }
}

package org.bandtrail.supplystock.reels;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.holdings.HoldingTables;
import org.bandtrail.supplystock.holdings.Line;
import org.bandtrail.supplystock.holdings.StockMove;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the balance, the places and the history of every reel. */
@Component
final class ReelBalanceProjection implements Projection {
    private final HoldingTables tables;

    ReelBalanceProjection(JdbcClient jdbc) {
        this.tables = new HoldingTables(jdbc, "reel");
    }

    @Override
    public String name() {
        return "reel-balance";
    }

    @Override
    public List<String> tables() {
        return tables.names();
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        tables.add(page.stream()
                .map(stored -> line(stored.position(), (ReelEvent) stored.payload()))
                .toList());
    }

    static Line line(long position, ReelEvent event) {
        return switch (event) {
            case ReelEvent.Received received ->
                new Line(
                        position,
                        received.reelId().value(),
                        "received",
                        null,
                        received.entry(),
                        new Line.Bought(
                                received.material(),
                                received.kind(),
                                received.length().mm(),
                                received.cost()),
                        Line.Revalued.NOT);
            case ReelEvent.MadeBySlitting made ->
                new Line(
                        position,
                        made.reelId().value(),
                        "slit from a wider reel",
                        "slitting " + made.slitting(),
                        made.entry(),
                        new Line.Bought(
                                made.material(), made.kind(), made.length().mm(), made.cost()),
                        Line.Revalued.NOT);
            case ReelEvent.Slit slit -> line(position, slit, "slit into narrower reels", "slitting " + slit.slitting());
            case ReelEvent.Relocated moved ->
                line(position, moved, moved.what().word(), note(moved.reference(), moved.reason()));
            case ReelEvent.Arrived arrived -> line(position, arrived, "arrived", "measured " + arrived.measured());
            case ReelEvent.SentBack back ->
                line(position, back, StockMove.SENT_BACK.word(), note(back.reference(), back.reason()))
                        .revalued(-back.taken().mm(), -back.cost().minor());
            case ReelEvent.CostChanged changed ->
                line(position, changed, changed.why().word(), changed.reference())
                        .revalued(0, changed.delta().minor());
            case ReelEvent.PutRight right -> line(position, right, "put right", right.reason());
            case ReelEvent.WrittenDown down -> line(position, down, "written down", down.reason());
            case ReelEvent.HandedOut out -> line(position, out, "handed out", "kit " + out.kit());
            case ReelEvent.LengthFitted fitted -> line(position, fitted, "fitted", fitted.fact());
            case ReelEvent.LengthTakenDown down -> line(position, down, "taken down", down.fact());
            case ReelEvent.LengthPutBackIntoUse back -> line(position, back, "put back into use", back.fact());
            case ReelEvent.LengthScrapped scrapped -> line(position, scrapped, "scrapped", scrapped.fact());
            case ReelEvent.LengthCorrected corrected -> line(position, corrected, "corrected", corrected.fact());
            case ReelEvent.LengthDisposed disposed -> line(position, disposed, "disposed", disposed.fact());
            case ReelEvent.Returned returned -> line(position, returned, "returned", "measured " + returned.measured());
            case ReelEvent.LengthWrittenOff off -> line(position, off, "written off", off.reason());
            case ReelEvent.LengthFound found -> line(position, found, "found", found.reason());
        };
    }

    private static Line line(long position, ReelEvent event, String what, @Nullable String note) {
        return new Line(position, event.reelId().value(), what, note, event.entry(), null, Line.Revalued.NOT);
    }

    private static @Nullable String note(@Nullable String reference, @Nullable String reason) {
        return reference == null ? reason : reason == null ? reference : reference + ": " + reason;
    }
}

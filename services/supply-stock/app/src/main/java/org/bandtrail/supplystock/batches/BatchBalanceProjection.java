package org.bandtrail.supplystock.batches;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.holdings.HoldingTables;
import org.bandtrail.supplystock.holdings.Line;
import org.bandtrail.supplystock.holdings.StockMove;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the balance, the places and the history of every batch. */
@Component
final class BatchBalanceProjection implements Projection {
    private final HoldingTables tables;

    BatchBalanceProjection(JdbcClient jdbc) {
        this.tables = new HoldingTables(jdbc, "batch");
    }

    @Override
    public String name() {
        return "batch-balance";
    }

    @Override
    public List<String> tables() {
        return tables.names();
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(BatchEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        tables.add(page.stream()
                .map(stored -> line(stored.position(), (BatchEvent) stored.payload()))
                .toList());
    }

    static Line line(long position, BatchEvent event) {
        return switch (event) {
            case BatchEvent.Received received ->
                new Line(
                        position,
                        received.batchId().value(),
                        "received",
                        null,
                        received.entry(),
                        new Line.Bought(
                                received.material(),
                                received.kind(),
                                received.pieces().count(),
                                received.cost()),
                        Line.Revalued.NOT);
            case BatchEvent.Relocated moved ->
                line(position, moved, moved.what().word(), note(moved.reference(), moved.reason()));
            case BatchEvent.Arrived arrived -> line(position, arrived, "arrived", "counted " + arrived.counted());
            case BatchEvent.SentBack back ->
                line(position, back, StockMove.SENT_BACK.word(), note(back.reference(), back.reason()))
                        .revalued(-back.taken().count(), -back.cost().minor());
            case BatchEvent.CostChanged changed ->
                line(position, changed, changed.why().word(), changed.reference())
                        .revalued(0, changed.delta().minor());
            case BatchEvent.PutRight right -> line(position, right, "put right", right.reason());
            case BatchEvent.WrittenDown down -> line(position, down, "written down", down.reason());
            case BatchEvent.HandedOut out -> line(position, out, "handed out", "kit " + out.kit());
            case BatchEvent.PiecesFitted fitted -> line(position, fitted, "fitted", fitted.fact());
            case BatchEvent.PiecesTakenDown down -> line(position, down, "taken down", down.fact());
            case BatchEvent.PiecesPutBackIntoUse back -> line(position, back, "put back into use", back.fact());
            case BatchEvent.PiecesScrapped scrapped -> line(position, scrapped, "scrapped", scrapped.fact());
            case BatchEvent.PiecesCorrected corrected -> line(position, corrected, "corrected", corrected.fact());
            case BatchEvent.PiecesDisposed disposed -> line(position, disposed, "disposed", disposed.fact());
            case BatchEvent.Returned returned -> line(position, returned, "returned", "counted " + returned.counted());
            case BatchEvent.PiecesWrittenOff off -> line(position, off, "written off", off.reason());
            case BatchEvent.PiecesFound found -> line(position, found, "found", found.reason());
        };
    }

    private static Line line(long position, BatchEvent event, String what, @Nullable String note) {
        return new Line(position, event.batchId().value(), what, note, event.entry(), null, Line.Revalued.NOT);
    }

    private static @Nullable String note(@Nullable String reference, @Nullable String reason) {
        return reference == null ? reason : reason == null ? reference : reference + ": " + reason;
    }
}

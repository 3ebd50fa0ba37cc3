package org.bandtrail.supplystock.recalls;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.deliveries.Lots;
import org.bandtrail.supplystock.holdings.Aside;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.bandtrail.supplystock.suppliers.Suppliers;
import org.bandtrail.supplystock.traces.Traces;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Carries a recall out: whatever of the lot lies in a depot goes aside, at the start and whenever more comes in. Which
 * depots to ask is read from the balances, which may lag; how much really goes aside is decided by each reel and batch.
 */
@Component
class RecallDesk {
    private final Commands commands;
    private final Recalls recalls;
    private final Traces traces;
    private final Suppliers suppliers;

    RecallDesk(Commands commands, Recalls recalls, Traces traces, Suppliers suppliers) {
        this.commands = commands;
        this.recalls = recalls;
        this.traces = traces;
        this.suppliers = suppliers;
    }

    /**
     * Recalls a lot and sets aside what depots have of it; call it inside a work.
     *
     * @return what went aside
     * @param named whose lot; null if there is but one supplier of it
     * @throws RecallRefused if the lot is recalled already, lot or reason is missing, or it is not clear whose lot
     */
    List<AsideLine> start(
            RecallId recall, String asked, @Nullable SupplierId named, String reason, PersonId by, Occurred occurred) {
        String lot = Lots.spelt(asked);
        SupplierId supplier = whose(recall, lot, named);
        recalls.openOf(lot, supplier).ifPresent(open -> {
            throw new RecallRefused.LotRecalledAlready(lot, open.recallId());
        });
        commands.send(new RecallCommand.Start(recall, lot, supplier, reason, by, occurred));
        return setAside(recall, lot, supplier.value(), reason, by, occurred);
    }

    private SupplierId whose(RecallId recall, String lot, @Nullable SupplierId named) {
        if (named != null) {
            suppliers.needKnown(named);
            return named;
        }
        if (lot.isBlank()) {
            throw new RecallRefused.LotMissing(recall);
        }
        List<String> delivered = traces.suppliersOf(lot);
        if (delivered.size() != 1) {
            throw new RecallRefused.WhoseLot(lot, delivered);
        }
        return new SupplierId(delivered.getFirst());
    }

    /** The one rule of an open recall: what of the lot is in a depot goes aside. Call it inside a work. */
    List<AsideLine> setAside(
            RecallId recall, String lot, @Nullable String supplier, String reason, PersonId by, Occurred occurred) {
        List<AsideLine> lines = new ArrayList<>();
        for (Traces.InDepot found : traces.inDepots(lot, supplier)) {
            Aside order = Aside.all(found.depot(), "recall " + recall, reason);
            long moved = ordered(found.holding(), found.id(), order, by, occurred);
            if (moved > 0) {
                lines.add(new AsideLine(found.holding(), found.id(), found.depot(), moved));
            }
        }
        commands.send(new RecallCommand.RecordAside(recall, lines, by, occurred));
        return lines;
    }

    /**
     * Lifts a recall and releases what it had set aside, as far as it is still there; call it inside a work.
     *
     * @return what was released
     * @throws RecallRefused if the recall is not open or the reason is missing
     */
    List<AsideLine> lift(RecallId recall, String reason, PersonId by, Occurred occurred) {
        List<AsideLine> released = new ArrayList<>();
        for (Object event : decided(new RecallCommand.Lift(recall, reason, by, occurred))) {
            if (event instanceof RecallEvent.Lifted lifted) {
                for (AsideLine line : lifted.lines()) {
                    Aside order = new Aside(
                            StockMove.RELEASED, line.depot(), line.quantity(), "recall " + recall + " lifted", reason);
                    long moved = ordered(line.holding(), line.id(), order, by, occurred);
                    if (moved > 0) {
                        released.add(new AsideLine(line.holding(), line.id(), line.depot(), moved));
                    }
                }
            }
        }
        return released;
    }

    /** How much of it really moved, in millimetres or pieces. */
    private long ordered(String holding, String id, Aside order, PersonId by, Occurred occurred) {
        Object command = holding.equals("reel")
                ? new ReelCommand.AsFarAsThere(new ReelId(id), order, by, occurred)
                : new BatchCommand.AsFarAsThere(new BatchId(id), order, by, occurred);
        long moved = 0;
        for (Object event : decided(command)) {
            Entry entry = event instanceof ReelEvent ofReel ? ofReel.entry() : ((BatchEvent) event).entry();
            moved += entry.moves().stream().mapToLong(Move::quantity).sum();
        }
        return moved;
    }

    private List<?> decided(Object command) {
        return commands.ask(command) instanceof List<?> events ? events : List.of();
    }
}

package org.bandtrail.supplystock.holdings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row of a history: one move with the charge that belongs to it, or a further charge of the same event.
 *
 * @param step 0, 1, 2 ... within the event
 */
record HistoryRow(
        Line line,
        int step,
        @Nullable String source,
        @Nullable String target,
        long quantity,
        @Nullable String account,
        long minor) {

    static List<HistoryRow> of(Line line) {
        List<Move> moves = line.entry().moves();
        List<Charge> charges = line.entry().charges();
        List<HistoryRow> rows = new ArrayList<>();
        for (int step = 0; step < Math.max(moves.size(), charges.size()); step++) {
            Move move = step < moves.size() ? moves.get(step) : null;
            Charge charge = step < charges.size() ? charges.get(step) : null;
            rows.add(new HistoryRow(
                    line,
                    step,
                    move == null ? null : move.source().toString(),
                    move == null ? null : move.target().toString(),
                    move == null ? 0 : move.quantity(),
                    charge == null ? null : charge.account(),
                    charge == null ? 0 : charge.minor()));
        }
        return rows;
    }
}

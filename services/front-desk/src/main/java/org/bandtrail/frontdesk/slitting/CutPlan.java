package org.bandtrail.frontdesk.slitting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.bandtrail.frontdesk.neighbours.depot.Stock;

/**
 * What somebody wants to cut out of a wide reel, before it is done. All widths in millimetres.
 *
 * @param strips from the left edge
 * @param trimMm what is left over; below zero if the strips are too wide together
 * @param lengthMm how much of the reel is slit
 */
public record CutPlan(
        Stock.Reel reel, Stock.Item wide, long lengthMm, List<Strip> strips, long trimMm, StripsDrawing drawing) {

    /** One strip: the label it gets and the item it becomes. */
    public record Strip(String label, Stock.Item item, long widthMm) {}

    /** A number of strips of one item. */
    public record Wanted(Stock.Item item, int strips) {}

    /** Lays strips side by side; labels come from the reel's own. */
    public static CutPlan of(
            Stock.Reel reel,
            Stock.Item wide,
            long lengthMm,
            List<Wanted> wanted,
            BiFunction<String, Integer, List<String>> labels) {
        int count = wanted.stream().mapToInt(Wanted::strips).sum();
        List<String> names = count == 0 ? List.of() : labels.apply(reel.reelId(), count);
        List<Strip> strips = new ArrayList<>();
        for (Wanted each : wanted) {
            for (int i = 0; i < each.strips(); i++) {
                strips.add(new Strip(names.get(strips.size()), each.item(), width(each.item())));
            }
        }
        long sum = strips.stream().mapToLong(Strip::widthMm).sum();
        return new CutPlan(
                reel,
                wide,
                lengthMm,
                List.copyOf(strips),
                width(wide) - sum,
                StripsDrawing.of(
                        width(wide),
                        strips.stream()
                                .map(strip -> new StripsDrawing.Strip(strip.label(), strip.widthMm()))
                                .toList()));
    }

    private static long width(Stock.Item item) {
        return item.widthMm() == null ? 0 : item.widthMm();
    }

    /** Whether it can be cut: there is a strip, and the strips fit. */
    public boolean fits() {
        return !strips.isEmpty() && trimMm >= 0;
    }

    /** By how much the strips are too wide together, zero if they fit. */
    public long tooWideMm() {
        return Math.max(0, -trimMm);
    }
}

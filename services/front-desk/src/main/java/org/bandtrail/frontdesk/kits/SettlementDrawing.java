package org.bandtrail.frontdesk.kits;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import org.bandtrail.frontdesk.neighbours.depot.Kit;

/**
 * Handed out = fitted + returned + scrapped + missing + elsewhere + still out, drawn as one bar, as wide as the
 * amounts. Negative amounts cannot be drawn; they stand in the table.
 *
 * @param unit mm or pieces
 * @param handedOut the whole bar
 * @param parts from left to right
 */
record SettlementDrawing(String unit, long handedOut, List<Part> parts) {
    /** Width of the whole bar in the units of the drawing. */
    static final int WIDTH = 1_000;

    /**
     * @param look the style of this part
     * @param x left edge; width likewise, in the units of the drawing
     */
    record Part(String look, String name, long quantity, long x, long width) {}

    private record Kind(String look, String name, ToLongFunction<Kit.Line> amount) {}

    private static final List<Kind> KINDS = List.of(
            new Kind("fitted", "fitted", Kit.Line::fitted),
            new Kind("returned", "returned", Kit.Line::returned),
            new Kind("scrapped", "scrapped", Kit.Line::scrapped),
            new Kind("missing", "missing", line -> line.missing() + line.settled()),
            new Kind("elsewhere", "with somebody else", Kit.Line::elsewhere),
            new Kind("out", "still out", Kit.Line::stillOut));

    /** One drawing for all reels and one for all batches, without those that the kit does not hold. */
    static List<SettlementDrawing> of(List<Kit.Line> lines) {
        List<SettlementDrawing> drawings = new ArrayList<>();
        for (String unit : List.of("mm", "pieces")) {
            List<Kit.Line> own =
                    lines.stream().filter(line -> line.unit().equals(unit)).toList();
            long handedOut = own.stream().mapToLong(Kit.Line::handedOut).sum();
            if (handedOut > 0) {
                drawings.add(new SettlementDrawing(unit, handedOut, parts(own)));
            }
        }
        return drawings;
    }

    private static List<Part> parts(List<Kit.Line> lines) {
        long drawn = 0;
        for (Kind kind : KINDS) {
            drawn += Math.max(0, lines.stream().mapToLong(kind.amount()).sum());
        }
        List<Part> parts = new ArrayList<>();
        long before = 0;
        for (Kind kind : KINDS) {
            long amount = lines.stream().mapToLong(kind.amount()).sum();
            if (amount != 0) {
                long from = before * WIDTH / Math.max(1, drawn);
                before += Math.max(0, amount);
                long to = before * WIDTH / Math.max(1, drawn);
                parts.add(new Part(kind.look(), kind.name(), amount, from, to - from));
            }
        }
        return parts;
    }
}

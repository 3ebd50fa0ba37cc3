package org.bandtrail.supplystock.kitlists;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;

/**
 * How lengths follow from a girth until plans give them: tape = girth + overlap + 2 tabs, mesh = girth + extra,
 * fasteners = max(fewest, ceil(girth / spacing)). Lengths in millimetres, all for one band. Source of the form: common
 * practice; the figures stand with the version that is used.
 *
 * @param overlap how far the tape laps over itself, 0 or more
 * @param tab folded end for the hand, one at each end, 0 or more
 * @param meshExtra how much longer than the girth the guard is, above 0: a guard without extra lies on the tape
 * @param spacing girth per fastener, above 0
 * @param fewest fasteners that hold any band, 1 or more
 * @param source where the figures come from
 */
public record KitRule(Length overlap, Length tab, Length meshExtra, Length spacing, Pieces fewest, String source) {

    /**
     * Refuses a rule that cannot give lengths.
     *
     * @throws IllegalArgumentException naming the figure
     */
    public KitRule {
        need(!overlap.isNegative(), "overlap", overlap, "0 mm or more");
        need(!tab.isNegative(), "tab", tab, "0 mm or more");
        need(meshExtra.isPositive(), "mesh extra", meshExtra, "more than 0 mm, or the guard lies on the tape");
        need(spacing.isPositive(), "fastener spacing", spacing, "more than 0 mm of girth per fastener");
        need(fewest.isPositive(), "fewest fasteners", fewest, "1 or more");
        need(!source.isBlank(), "source", source, "where these figures come from");
    }

    /** Tape for one band round this girth. */
    public Length tape(Length girth) {
        return girth.plus(overlap).plus(tab.times(2));
    }

    /** Mesh for one guard round this girth. */
    public Length mesh(Length girth) {
        return girth.plus(meshExtra);
    }

    /** Fasteners for one band round this girth. */
    public Pieces fasteners(Length girth) {
        return Pieces.of(Math.max(fewest.count(), Math.ceilDiv(girth.mm(), spacing.mm())));
    }

    private static void need(boolean fits, String what, Object value, String wanted) {
        if (!fits) {
            throw new IllegalArgumentException("The %s [%s] does not fit. Use %s.".formatted(what, value, wanted));
        }
    }
}

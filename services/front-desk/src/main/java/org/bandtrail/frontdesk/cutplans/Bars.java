package org.bandtrail.frontdesk.cutplans;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bandtrail.frontdesk.neighbours.field.Cuts;

/**
 * Reels of one material as bars to scale, one under the other: pieces from the left, then what goes back to the depot
 * or is scrap. The longest reel is {@value #WIDE} pixels long; a rest of many times the pieces is shortened, and says so,
 * because a full reel beside three pieces would leave nothing of them to see.
 *
 * @param bars one for each reel
 */
public record Bars(List<Bar> bars) {
    private static final double WIDE = 680;

    /** Words need about so many pixels for a letter, and some on both sides. */
    private static final double LETTER = 6.6;

    private static final double ASIDE = 6;

    /** As long as the length of a piece in words mostly is. */
    private static final int LEAST_LETTERS = 9;

    /** A longer rest than this share of the pieces beside it is drawn shortened. */
    private static final double LONGEST_REST = 1.0;

    /**
     * One reel.
     *
     * @param reel what it is
     * @param parts from left to right
     * @param shortened whether its rest is drawn shorter than it is
     */
    public record Bar(Cuts.Reel reel, List<Part> parts, boolean shortened) {}

    /**
     * A piece or a rest.
     *
     * @param x left side, in pixels
     * @param width in pixels
     * @param middle where its words stand, in pixels
     * @param look {@code piece}, {@code left}, {@code scrap}
     * @param name the tree, or what it is
     * @param mm its length in millimetres
     * @param roomy whether words fit into it
     */
    public record Part(String x, String width, String middle, String look, String name, long mm, boolean roomy) {}

    /** Draws the reels of a material. */
    public static Bars of(List<Cuts.Reel> reels) {
        long longest = reels.stream().mapToLong(Bars::drawn).max().orElse(1);
        double scale = WIDE / Math.max(1, longest);
        return new Bars(reels.stream().map(reel -> bar(reel, scale)).toList());
    }

    private static long drawn(Cuts.Reel reel) {
        return pieces(reel) + reel.scrapMm() + reel.bladeMm() + drawnRest(reel);
    }

    private static long drawnRest(Cuts.Reel reel) {
        return Math.min(reel.leftoverMm(), Math.round(LONGEST_REST * pieces(reel)));
    }

    private static long pieces(Cuts.Reel reel) {
        return reel.pieces().stream().mapToLong(Cuts.Piece::lengthMm).sum();
    }

    private static Bar bar(Cuts.Reel reel, double scale) {
        List<Part> parts = new ArrayList<>();
        double at = 0;
        for (Cuts.Piece piece : reel.pieces()) {
            String name = piece.position() == 1 ? piece.treeId() : piece.treeId() + " / " + piece.position();
            parts.add(part(at, piece.lengthMm() * scale, "piece", name, piece.lengthMm()));
            at += piece.lengthMm() * scale;
        }
        if (reel.leftoverMm() > 0) {
            parts.add(part(at, drawnRest(reel) * scale, "left", "back to the depot", reel.leftoverMm()));
            at += drawnRest(reel) * scale;
        }
        if (reel.scrapMm() + reel.bladeMm() > 0) {
            long lost = reel.scrapMm() + reel.bladeMm();
            parts.add(part(at, lost * scale, "scrap", reel.bladeMm() > 0 ? "scrap and blade" : "scrap", lost));
        }
        return new Bar(reel, List.copyOf(parts), drawnRest(reel) < reel.leftoverMm());
    }

    private static Part part(double at, double width, String look, String name, long mm) {
        return new Part(number(at), number(width), number(at + width / 2), look, name, mm, width >= room(name));
    }

    private static double room(String name) {
        return LETTER * Math.max(name.length(), LEAST_LETTERS) + ASIDE;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}

package org.bandtrail.frontdesk.slitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A wide reel seen from above, across its width, to scale: strips side by side from the left edge, then the trim,
 * then what is planned beyond the reel's edge. One drawing is {@value #WIDE} pixels for the reel, or for the strips
 * if they are wider.
 *
 * @param parts from left to right
 * @param edge x of the reel's right edge, in pixels
 */
public record StripsDrawing(List<Part> parts, String edge) {
    private static final double WIDE = 680;

    /**
     * One strip or the trim.
     *
     * @param x left side, in pixels
     * @param width in pixels
     * @param middle where its words stand, in pixels
     * @param look {@code strip}, {@code trim}
     * @param name its label, or what it is
     * @param mm its width in millimetres
     * @param roomy whether words fit into it
     */
    public record Part(String x, String width, String middle, String look, String name, long mm, boolean roomy) {}

    /** A strip to draw: its label and its width in millimetres. */
    public record Strip(String label, long widthMm) {}

    /**
     * Draws strips on a reel.
     *
     * @param reelMm width of the wide reel in millimetres, above zero
     */
    public static StripsDrawing of(long reelMm, List<Strip> strips) {
        if (reelMm <= 0) {
            throw new IllegalArgumentException("A reel %d mm wide cannot be drawn. Check its item.".formatted(reelMm));
        }
        long sum = strips.stream().mapToLong(Strip::widthMm).sum();
        double scale = WIDE / Math.max(reelMm, sum);
        List<Part> parts = new ArrayList<>();
        long at = 0;
        for (Strip strip : strips) {
            parts.add(part(at, strip.widthMm(), scale, "strip", strip.label()));
            at += strip.widthMm();
        }
        if (sum < reelMm) {
            parts.add(part(at, reelMm - sum, scale, "trim", "trim"));
        }
        return new StripsDrawing(List.copyOf(parts), number(reelMm * scale));
    }

    private static Part part(long at, long mm, double scale, String look, String name) {
        double width = mm * scale;
        return new Part(
                number(at * scale), number(width), number((at + mm / 2.0) * scale), look, name, mm, width >= 74);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}

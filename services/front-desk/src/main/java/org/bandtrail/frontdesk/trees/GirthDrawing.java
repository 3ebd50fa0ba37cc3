package org.bandtrail.frontdesk.trees;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.bandtrail.frontdesk.neighbours.field.Installs;

/**
 * The girths of one tree over time as a line. The height of the drawing is from a little below the smallest to a little
 * above the largest girth, a twentieth of the girth at least; it does not begin at zero, so the scale is written beside it.
 *
 * @param dots the measurements, the earliest first
 * @param line the path through them
 * @param least the smallest girth in mm
 * @param most the largest girth in mm
 */
public record GirthDrawing(List<Dot> dots, String line, long least, long most) {
    static final int WIDTH = 640;
    static final int HEIGHT = 160;
    private static final int MARGIN = 16;

    /** The drawing shows at least this part of the girth from bottom to top, or a millimetre would look like growth. */
    private static final int LEAST_SHARE = 20;

    /**
     * One measurement.
     *
     * @param x from the left
     * @param y from the top
     * @param girthMm in mm
     * @param at when
     */
    public record Dot(int x, int y, long girthMm, Instant at) {}

    /** Whether there is anything to see: one dot is no line. */
    public boolean isWorthwhile() {
        return dots.size() > 1;
    }

    /** Size of the drawing, in its own units. */
    public int width() {
        return WIDTH;
    }

    /** Size of the drawing, in its own units. */
    public int height() {
        return HEIGHT;
    }

    /** The drawing of the girths in a history. */
    static GirthDrawing of(List<Installs.TreeStep> history) {
        List<Installs.TreeStep> measured = history.stream()
                .filter(step -> step.girthMm() != null && step.happenedAt() != null)
                .sorted(Comparator.comparing(step -> Objects.requireNonNull(step.happenedAt())))
                .toList();
        long least = measured.stream()
                .mapToLong(step -> Objects.requireNonNull(step.girthMm()))
                .min()
                .orElse(0);
        long most = measured.stream()
                .mapToLong(step -> Objects.requireNonNull(step.girthMm()))
                .max()
                .orElse(0);
        long high = Math.max(most - least, most / LEAST_SHARE);
        long low = (least + most - high) / 2;
        List<Dot> dots = new ArrayList<>();
        for (Installs.TreeStep step : measured) {
            Instant at = Objects.requireNonNull(step.happenedAt());
            long girth = Objects.requireNonNull(step.girthMm());
            Instant first = Objects.requireNonNull(measured.getFirst().happenedAt());
            Instant last = Objects.requireNonNull(measured.getLast().happenedAt());
            dots.add(new Dot(
                    placed(at.getEpochSecond(), first.getEpochSecond(), last.getEpochSecond(), WIDTH),
                    HEIGHT - placed(girth, low, low + high, HEIGHT),
                    girth,
                    at));
        }
        return new GirthDrawing(List.copyOf(dots), path(dots), least, most);
    }

    private static int placed(long value, long from, long to, int length) {
        if (to == from) {
            return length / 2;
        }
        return MARGIN + (int) ((length - 2L * MARGIN) * (value - from) / (to - from));
    }

    private static String path(List<Dot> dots) {
        StringBuilder path = new StringBuilder();
        for (Dot dot : dots) {
            path.append(String.format(Locale.ROOT, "%s%d %d", path.isEmpty() ? "M" : " L", dot.x(), dot.y()));
        }
        return path.toString();
    }
}

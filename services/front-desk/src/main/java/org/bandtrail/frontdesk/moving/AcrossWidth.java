package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.frontdesk.neighbours.Moved;

/**
 * A wide reel seen from its edge, to scale: strips side by side, the trim last.
 *
 * @param parts in order across the width
 */
record AcrossWidth(List<Part> parts) {
    /** How wide the drawing is, in its own units. */
    static final int WIDTH = 720;

    /**
     * @param x where it begins
     * @param width how wide it is drawn
     * @param name what is written on it
     */
    record Part(double x, double width, String name, long mm, boolean trim) {}

    static AcrossWidth of(Moved.Slitting slitting) {
        double scale = (double) WIDTH / slitting.widthMm();
        List<Part> parts = new ArrayList<>();
        long at = 0;
        for (Moved.Made strip : slitting.strips()) {
            parts.add(new Part(at * scale, strip.widthMm() * scale, strip.reelId(), strip.widthMm(), false));
            at += strip.widthMm();
        }
        if (slitting.trimMm() > 0) {
            parts.add(new Part(at * scale, slitting.trimMm() * scale, "trim", slitting.trimMm(), true));
        }
        return new AcrossWidth(parts);
    }
}

package org.bandtrail.supplystock.slittings;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.costs.LargestRemainder;

/**
 * The rules of a slitting: one wide reel in, strips and an edge trim out.
 *
 * @param done whether it was done
 */
public record Slitting(boolean done) {
    /** A slitting nobody has done. */
    public static final Slitting UNKNOWN = new Slitting(false);

    /**
     * What a command makes happen.
     *
     * @throws SlittingRefused if the wish cannot be granted
     */
    public List<SlittingEvent> decide(SlittingCommand command) {
        return switch (command) {
            case SlittingCommand.Slit slit -> slit(slit);
        };
    }

    private List<SlittingEvent> slit(SlittingCommand.Slit slit) {
        if (done) {
            throw new SlittingRefused.SlittingDoneAlready(slit.slittingId());
        }
        if (slit.strips().isEmpty()) {
            throw new SlittingRefused.NoStrips(slit.slittingId());
        }
        requireNewLabels(slit);
        long widths =
                slit.strips().stream().mapToLong(strip -> strip.width().mm()).sum();
        if (widths + slit.trim().mm() != slit.width().mm()) {
            throw new SlittingRefused.WidthsDoNotAddUp(
                    slit.slittingId(), slit.width(), Length.ofMm(widths), slit.trim());
        }
        return List.of(new SlittingEvent.Slit(
                slit.slittingId(),
                slit.reelId(),
                slit.material(),
                slit.length(),
                slit.width(),
                slit.strips(),
                slit.trim(),
                slit.by(),
                slit.occurred()));
    }

    private static void requireNewLabels(SlittingCommand.Slit slit) {
        Set<ReelId> labels = new HashSet<>(Set.of(slit.reelId()));
        for (Strip strip : slit.strips()) {
            if (!labels.add(strip.reelId())) {
                throw new SlittingRefused.LabelTwice(slit.slittingId(), strip.reelId());
            }
        }
    }

    /**
     * The cost of each strip: by its width, largest remainder, so that the strips cost together what the wide length did.
     * The trim gets nothing, its cost is a normal loss and lies on the strips (IAS 2 paragraphs 10 to 12).
     *
     * @param minor cost of the wide length in minor units
     * @return one part for each strip, in order
     */
    public static List<Long> costs(long minor, List<Strip> strips) {
        return LargestRemainder.split(
                minor, strips.stream().map(strip -> strip.width().mm()).toList());
    }

    /** The slitting after an event. */
    public Slitting evolve(SlittingEvent event) {
        return switch (event) {
            case SlittingEvent.Slit _ -> new Slitting(true);
        };
    }
}

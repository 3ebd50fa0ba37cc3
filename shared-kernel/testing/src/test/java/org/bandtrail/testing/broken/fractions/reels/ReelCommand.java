package org.bandtrail.testing.broken.fractions.reels;

import java.math.BigDecimal;
import java.util.List;

/** What is asked of a reel, in fractions. */
public sealed interface ReelCommand {
    /** Bare, boxed and in a list. */
    record Receive(double metres, Float feet, List<BigDecimal> costs) implements ReelCommand {}
}

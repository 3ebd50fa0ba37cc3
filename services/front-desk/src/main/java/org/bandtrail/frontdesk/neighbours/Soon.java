package org.bandtrail.frontdesk.neighbours;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * What was stored a moment ago is readable a moment later, because balances follow the events. A page that says
 * "stored" waits until its own work can be seen, so that nobody wonders where it went; if that takes longer than the
 * patience here, the page is shown as it is.
 */
public final class Soon {
    private static final Duration PATIENCE = Duration.ofSeconds(4);
    private static final Duration PAUSE = Duration.ofMillis(60);

    private Soon() {}

    /** Waits until something can be read that was not there before. */
    public static void readable(Supplier<?> question) {
        until(() -> question.get() != null);
    }

    /** Waits until this is so. A refusal to answer, such as 404, counts as not yet. */
    public static void until(BooleanSupplier seen) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!isSo(seen) && System.nanoTime() < end) {
            try {
                Thread.sleep(PAUSE);
            } catch (InterruptedException stopping) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private static boolean isSo(BooleanSupplier seen) {
        try {
            return seen.getAsBoolean();
        } catch (NeighbourRefused notYet) {
            return false;
        }
    }
}

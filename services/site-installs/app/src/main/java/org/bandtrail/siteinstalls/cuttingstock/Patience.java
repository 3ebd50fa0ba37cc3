package org.bandtrail.siteinstalls.cuttingstock;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * How long somebody waits for a plan. The clock is given, so that a test can stop it; it must run forwards only, like
 * {@code System::nanoTime}.
 */
public final class Patience implements BooleanSupplier {
    private static final int SPARE = 20;
    private final LongSupplier nanos;
    private final long start;
    private final long limitNanos;

    private Patience(LongSupplier nanos, long limitNanos) {
        this.nanos = nanos;
        this.start = nanos.getAsLong();
        this.limitNanos = limitNanos - limitNanos / SPARE;
    }

    /**
     * Patience that begins now.
     *
     * @param nanos a clock in nanoseconds that never runs backwards; its zero means nothing
     * @param limit by which the best plan so far is wanted; the search ends a twentieth earlier, for what it is just
     *     trying when it looks at the clock
     */
    public static Patience of(LongSupplier nanos, Duration limit) {
        return new Patience(nanos, limit.toNanos());
    }

    /** Patience that never ends: the search stops by its own limits, and its result depends on the seed alone. */
    public static Patience endless() {
        return new Patience(() -> 0, 1);
    }

    /** True when the search should end. */
    @Override
    public boolean getAsBoolean() {
        return nanos.getAsLong() - start >= limitNanos;
    }
}

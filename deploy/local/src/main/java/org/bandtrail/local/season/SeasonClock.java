package org.bandtrail.local.season;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/**
 * The clock of a house that is loading a season: it can be set to the day whose facts are arriving, so that the books
 * know each fact from the day its crew told it and not from the day the demo was started. It always ticks; until it is
 * set, and after it is set back, it shows the real time.
 */
public final class SeasonClock extends Clock {
    private final Clock real;
    private volatile Duration behind = Duration.ZERO;

    /** A clock that shows this real time until it is set. */
    public SeasonClock(Clock real) {
        this.real = real;
    }

    /** Sets the clock to a moment; it goes on from there. */
    public void set(Instant moment) {
        behind = Duration.between(moment, real.instant());
    }

    /** Sets the clock back to the real time. */
    public void setBack() {
        behind = Duration.ZERO;
    }

    @Override
    public Instant instant() {
        return real.instant().minus(behind);
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    /** The same clock in another zone, set once and for all to what this one shows now. */
    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.offset(real.withZone(zone), behind.negated());
    }
}

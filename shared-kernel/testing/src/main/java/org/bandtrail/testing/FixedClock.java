package org.bandtrail.testing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until the test moves it. UTC; safe to move from another thread. */
public final class FixedClock extends Clock {
    private final ZoneId zone;
    private final Moment moment;

    private FixedClock(ZoneId zone, Moment moment) {
        this.zone = zone;
        this.moment = moment;
    }

    /** A clock at this ISO 8601 instant, for example {@code 2026-05-04T07:30:00Z}. */
    public static FixedClock at(String instant) {
        return at(Instant.parse(instant));
    }

    /** A clock at this instant. */
    public static FixedClock at(Instant instant) {
        return new FixedClock(ZoneOffset.UTC, new Moment(instant));
    }

    /** Moves the hands by a duration, backwards if it is negative, and returns where they now stand. */
    public Instant advance(Duration by) {
        return moment.advance(by);
    }

    /** Puts the hands at an instant, earlier ones too: clocks of telephones do that. */
    public void set(Instant instant) {
        moment.set(instant);
    }

    @Override
    public Instant instant() {
        return moment.get();
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    /** The same hands read in another zone: moving one clock moves the other. */
    @Override
    public Clock withZone(ZoneId other) {
        return new FixedClock(other, moment);
    }

    private static final class Moment {
        private Instant now;

        private Moment(Instant now) {
            this.now = now;
        }

        private synchronized Instant get() {
            return now;
        }

        private synchronized void set(Instant instant) {
            now = instant;
        }

        private synchronized Instant advance(Duration by) {
            now = now.plus(by);
            return now;
        }
    }
}

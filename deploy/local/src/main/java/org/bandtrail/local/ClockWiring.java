package org.bandtrail.local;

import java.time.Clock;
import org.bandtrail.local.season.SeasonClock;

/** Where the house gets the time from: the machine, in UTC, through a clock that can follow a season being loaded. */
final class ClockWiring {

    private ClockWiring() {}

    /** A clock that shows the machine's time until a season sets it. */
    static SeasonClock clock() {
        return new SeasonClock(Clock.systemUTC());
    }
}

package org.bandtrail.siteinstalls.cutplans;

/** A clock in nanoseconds that never runs backwards; its zero means nothing. */
interface SearchClock {
    /** Nanoseconds since some moment. */
    long nanos();
}

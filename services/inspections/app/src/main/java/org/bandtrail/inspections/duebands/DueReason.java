package org.bandtrail.inspections.duebands;

import java.util.Locale;

/** Why a look is due; of two at the same moment the one named first here is given. */
public enum DueReason {
    /** An animal was found and nobody has told what became of it. */
    BYCATCH,
    /** The guard did not keep wildlife off the tape. */
    GUARD,
    /** The band has hung as long as it may. */
    MUST_REMOVE,
    /** The last look did not read the band. */
    NOT_READ,
    /** The surface was filling up. */
    LOAD,
    /** The longest time between two readings has passed. */
    INTERVAL;

    /** The word used outside, for example {@code must-remove}. */
    public String spelt() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

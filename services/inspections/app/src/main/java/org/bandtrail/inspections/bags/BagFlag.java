package org.bandtrail.inspections.bags;

import java.util.Locale;

/** What somebody should know about a bag that left with a load. */
public enum BagFlag {
    /** Nothing is known of this bag; what it holds is booked as soon as somebody tells. */
    BAG_NOT_KNOWN_YET,
    /** The bag had already gone with another load. */
    BAG_ALREADY_GONE;

    /** The word used outside, for example {@code bag-already-gone}. */
    public String spelt() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

package org.bandtrail.inspections.bands;

import java.util.Locale;

/** What somebody should know about a fact that was accepted. A flag never keeps a fact out. */
public enum BandFlag {
    /** Nobody has told yet that this band was fitted; its material is booked as soon as somebody does. */
    BAND_NOT_KNOWN_YET,
    /** The band was too full to catch on: the true number is at least the count. */
    CATCH_IS_LOWER_BOUND,
    /** Insects were counted although the answer says the band was not read; they count nowhere. */
    CATCH_WITHOUT_READING,
    /** Written down long after it was done. */
    RECORDED_LATE,
    /** The device's clock ran ahead. */
    CLOCK_AHEAD,
    /** The band had come down before. */
    BAND_ALREADY_DOWN,
    /** Something done later was known already; places were worked out anew. */
    OUT_OF_ORDER,
    /** Waste went into a bag that nobody named; it waits under the person's name. */
    BAG_NOT_NAMED;

    /** The word used outside, for example {@code recorded-late}. */
    public String spelt() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

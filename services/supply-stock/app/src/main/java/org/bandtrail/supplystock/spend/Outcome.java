package org.bandtrail.supplystock.spend;

/** What became of material that was paid for. */
public enum Outcome {
    /** Used at a site, and what its cost changed by later. */
    USED,
    /** Spoilt on the job at a site. */
    SCRAPPED,
    /** Missing, and written off. */
    MISSING,
    /** Stock that was written down. */
    WRITTEN_DOWN
}

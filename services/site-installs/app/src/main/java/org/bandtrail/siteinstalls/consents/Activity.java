package org.bandtrail.siteinstalls.consents;

/** What may be done on a site; each is asked for by name, because owners allow one and not the other. */
public enum Activity {
    /** Tag and measure trees. */
    MEASURE("tagging and measuring trees"),
    /** Put up bands with their guards, look at them, take them down. */
    BANDS("bands and guards"),
    /** Hang traps that need other fixings than a band. */
    TRAPS("traps"),
    /** Scrape loose bark and moss. */
    SCRAPE("scraping loose bark"),
    /** Take down host trees. */
    FELL("taking down host trees");

    private final String words;

    Activity(String words) {
        this.words = words;
    }

    /** As it stands in a sentence after "covers". */
    public String words() {
        return words;
    }
}

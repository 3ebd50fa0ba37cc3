package org.bandtrail.supplystock.audits;

/** A station of the trail with its law: what came in is what went out and what is still there. */
enum Station {
    SET_ASIDE("set aside", "delivered or set aside = accepted or released + sent away + set aside now"),
    DEPOT("in depots", "received + brought back = handed out + sent away + in depots now"),
    IN_TRANSIT("on the way", "sent = arrived + missing + on the way now"),
    VEHICLE("in vehicles", "loaded = unloaded + sent + in vehicles now"),
    CREW("with crews", "handed out + put back into use = fitted + brought back + scrapped + missing + with crews now"),
    TREE("on trees", "fitted = taken down + put back into use + on trees now"),
    BAG("in waste bags", "taken down into bags + scrapped = disposed + in waste bags now"),
    DISPOSED("disposed", "what left with loads = disposed"),
    SLIT("slit", "cut into narrower reels = made of it + not accounted for"),
    MISSING("missing", "not brought back = turned up later + written off + missing now"),
    WRITTEN_OFF("written off", "given up with a reason = written off");

    private final String words;
    private final String statement;

    Station(String words, String statement) {
        this.words = words;
        this.statement = statement;
    }

    String words() {
        return words;
    }

    String statement() {
        return statement;
    }

    /** The word of the place kind, as in the tables. */
    String place() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}

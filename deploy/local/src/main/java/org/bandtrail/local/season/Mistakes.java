package org.bandtrail.local.season;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What goes wrong in the season on purpose, each once, with its date, so that the books have something to find. The
 * README of the demo data tells the same list in words.
 */
final class Mistakes {
    /** The River crew's telephone is broken on these days; it sends them after that week's kit is back. */
    static final LocalDate SILENT_FROM = LocalDate.of(2026, 6, 9);

    static final LocalDate SILENT_TO = LocalDate.of(2026, 6, 16);
    static final String SILENT_CREW = "C-3";
    static final String SILENT_SENT_AT = "2026-06-17T20:00:00Z";

    /** The day the Quarry crew's kit comes back without one tape reel, which nobody sees again. */
    static final LocalDate LOST_REEL = LocalDate.of(2026, 7, 10);

    static final String LOST_REEL_CREW = "C-4";

    /** The day the River crew takes a part reel from the shelf without a handout. */
    static final LocalDate UNWRITTEN_REEL = LocalDate.of(2026, 7, 6);

    static final String UNWRITTEN_REEL_CREW = "C-3";

    /** The day a reel number is typed that was never bought. */
    static final LocalDate WRONG_NUMBER = LocalDate.of(2026, 5, 20);

    static final String WRONG_NUMBER_CREW = "C-1";
    static final String WRONG_NUMBER_REEL = "R-0990";

    /** The day the Rail crew strays over the boundary and bands a tree the Moor crew has banded already. */
    static final LocalDate SECOND_BAND = LocalDate.of(2026, 5, 27);

    static final String SECOND_BAND_CREW = "C-2";
    static final String SECOND_BAND_SITE = "S-02";

    /** The day a bird is found on a band. */
    static final LocalDate BIRD = LocalDate.of(2026, 6, 2);

    static final String BIRD_CREW = "C-2";

    /** The day a guard has failed and the crew has no mesh with it; it is mended the next day. */
    static final LocalDate GUARD = LocalDate.of(2026, 7, 22);

    static final String GUARD_CREW = "C-4";

    /** Kits of the last week that are still out when the season's files end. */
    static final Map<String, String> STILL_OUT = Map.of("C-2", "2026-08-17", "C-4", "2026-08-17");

    private Mistakes() {}

    /** What the inventory says instead of the right girth, or null for the hundreds of rows that are right. */
    static @Nullable String wronglyWritten(Stand.Tree tree) {
        return switch (tree.siteId() + " " + tree.tag()) {
            case "S-06 T012" -> "";
            case "S-08 T020" -> "n. m.";
            case "S-02 T007" -> "2.8";
            case "S-09 T030" -> "38";
            default -> null;
        };
    }

    /** Whether the wrong row can be read, so that the import stores it and only asks. */
    static boolean isStoredNevertheless(Stand.Tree tree) {
        return tree.siteId().equals("S-02");
    }

    /** Why the inventory's row was wrong, for the corrections file. */
    static String whyWrong(Stand.Tree tree) {
        return switch (tree.siteId() + " " + tree.tag()) {
            case "S-06 T012", "S-08 T020" -> "not measured in the inventory, measured later";
            case "S-02 T007" -> "feet typed as inches, measured again";
            default -> "written without a unit, measured again";
        };
    }
}

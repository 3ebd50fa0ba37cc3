package org.bandtrail.frontdesk.sites;

import java.util.Locale;
import org.bandtrail.frontdesk.neighbours.field.Mapped;

/** Addresses of parts of the map. */
final class MapLinks {
    private MapLinks() {}

    /** The address of the map that shows this box. */
    static String to(Mapped.Box box) {
        return "/map?south=%s&west=%s&north=%s&east=%s"
                .formatted(plain(box.south()), plain(box.west()), plain(box.north()), plain(box.east()));
    }

    /** Degrees as they stand in an address, to about a tenth of a metre. */
    static String plain(double degrees) {
        return String.format(Locale.ROOT, "%.6f", degrees);
    }
}

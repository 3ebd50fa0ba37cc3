package org.bandtrail.supplystock.causes;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.holdings.Place;

/**
 * Puts evidence into words.
 *
 * @param pieces whether quantities are pieces, not millimetres
 */
record Words(boolean pieces) {
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH).withZone(ZoneOffset.UTC);

    String much(long quantity) {
        return pieces ? Pieces.of(quantity).toString() : Length.ofMm(quantity).toString();
    }

    /** A day of the year, in UTC. */
    String day(Instant moment) {
        return DAY.format(moment);
    }

    /** A place as people say it. */
    String at(Place place) {
        return switch (place.kind()) {
            case SUPPLIER -> "from the supplier";
            case WRITTEN_OFF -> "as written off";
            case DISPOSED -> "with disposal load " + place.id();
            case TREE -> "at tree " + place.id();
            case BAG -> "with waste bag " + place.id();
            case CREW, MISSING -> "with " + place.id();
            case SET_ASIDE -> "set aside at " + place.id();
            case IN_TRANSIT -> "on transfer " + place.id();
            case SLIT -> "at slitting " + place.id();
            case DEPOT, VEHICLE -> "at " + place.kind().word() + " " + place.id();
        };
    }

    /** How long, in the largest whole unit that has at least two of it. */
    static String time(Duration time) {
        if (time.toHours() >= 48) {
            return time.toDays() + " days";
        }
        return time.toMinutes() >= 120 ? time.toHours() + " hours" : time.toMinutes() + " minutes";
    }

    /** With a capital letter. */
    static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ENGLISH) + text.substring(1);
    }
}

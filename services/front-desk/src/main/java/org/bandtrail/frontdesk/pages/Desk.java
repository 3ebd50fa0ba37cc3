package org.bandtrail.frontdesk.pages;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bandtrail.frontdesk.people.Person;
import org.bandtrail.frontdesk.people.Role;
import org.bandtrail.frontdesk.wording.CommandIds;
import org.bandtrail.frontdesk.wording.Days;
import org.bandtrail.frontdesk.wording.Figures;
import org.bandtrail.frontdesk.wording.Units;
import org.jspecify.annotations.Nullable;

/**
 * The reader's pen: what templates use to put things in words for whoever reads.
 *
 * @param reader who reads, or null before sign-in
 * @param at the path of this page, to mark it in the navigation
 * @param figures quantities in the reader's units
 * @param days days in words
 * @param names names by person id
 */
public record Desk(
        @Nullable Person reader, String at, Figures figures, Days days, Map<String, String> names, CommandIds ids) {
    private static final Pattern IDENTITY = Pattern.compile("[A-Z0-9][A-Z0-9-]*");

    /** The theme the reader chose: auto, day or dark. */
    public String theme() {
        return reader == null ? "auto" : reader.theme();
    }

    /** Tells whether the reader has this role, by its constant's name. */
    public boolean may(String role) {
        return reader != null && reader.may(Role.valueOf(role));
    }

    /** A fresh command id for one form. */
    public String commandId() {
        return ids.next();
    }

    /** A fresh identity with this prefix for something a form creates, for example {@code B-0F3K9Q-7MXT}. */
    public String freshId(String prefix) {
        return Fresh.id(prefix, ids.next());
    }

    /** The name of a person, or the identity if no name is known. */
    public String person(@Nullable String personId) {
        return personId == null || personId.isBlank() ? "nobody" : names.getOrDefault(personId, personId);
    }

    /** A sentence of a service with identities of known people replaced by their names. */
    public String named(@Nullable String sentence) {
        if (sentence == null) {
            return "";
        }
        return IDENTITY.matcher(sentence)
                .replaceAll(found -> Matcher.quoteReplacement(names.getOrDefault(found.group(), found.group())));
    }

    /** A place such as {@code crew:P-07} in words, for example {@code with Wren Alder}. */
    public String place(@Nullable String place) {
        if (place == null || place.isBlank()) {
            return "nowhere";
        }
        int colon = place.indexOf(':');
        String kind = colon < 0 ? place : place.substring(0, colon);
        String id = colon < 0 ? "" : place.substring(colon + 1);
        return switch (kind) {
            case "supplier" -> "the supplier";
            case "set-aside" -> "set aside at depot " + id;
            case "depot" -> "depot " + id.replace("/", ", bin ");
            case "in-transit" -> "on the way with transfer " + id;
            case "vehicle" -> "in vehicle " + id;
            case "slit" -> "slit, " + id;
            case "crew" -> "with " + person(id);
            case "tree" -> "tree " + id;
            case "bag" -> "waste bag " + id;
            case "disposed" -> id.isEmpty() ? "disposed" : "disposed with load " + id;
            case "written-off" -> "written off";
            case "missing" -> "missing, last with " + person(id);
            default -> place;
        };
    }

    /** The page about a place, or null if there is none. */
    public @Nullable String placeLink(@Nullable String place) {
        if (place == null || !place.contains(":")) {
            return null;
        }
        String id = place.substring(place.indexOf(':') + 1);
        return switch (place.substring(0, place.indexOf(':'))) {
            case "tree" -> "/trees/" + id;
            case "depot", "crew" -> "/reels?place=" + place;
            case "set-aside" -> "/set-aside";
            case "vehicle" -> "/reels?place=" + place;
            case "in-transit" -> "/transfers/" + id;
            case "slit" -> "/slittings/" + id;
            case "bag" -> "/waste";
            case "missing" -> "/audit";
            case "disposed" -> "/waste";
            default -> null;
        };
    }

    /** Tells whether this destination of the navigation is the current one. */
    public boolean within(String... starts) {
        for (String start : starts) {
            if (start.equals("/") ? at.equals("/") : at.equals(start) || at.startsWith(start + "/")) {
                return true;
            }
        }
        return false;
    }

    /** The unit short lengths are entered in. */
    public String smallUnit() {
        return figures.units().small();
    }

    /** The unit long lengths are entered in. */
    public String largeUnit() {
        return figures.units().large();
    }

    /** Tells whether the reader reads metres. */
    public boolean metric() {
        return figures.units() == Units.SI;
    }
}

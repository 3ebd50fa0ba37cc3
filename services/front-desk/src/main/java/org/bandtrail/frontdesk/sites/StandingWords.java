package org.bandtrail.frontdesk.sites;

import org.bandtrail.frontdesk.neighbours.field.Ground;
import org.bandtrail.frontdesk.wording.Days;

/**
 * How a site stands, in words.
 *
 * @param days days as the reader says them
 */
public record StandingWords(Days days) {

    /** For example {@code consent ends on Friday}. */
    public String of(Ground.Standing site) {
        String last = days.day(site.lastDay());
        return switch (site.standing()) {
            case "HOLDS" -> site.lastDay() == null ? "consent without an end" : "consent until " + last;
            case "ENDS_TODAY" -> "consent ends today";
            case "ENDS_SOON" -> "consent ends " + last;
            case "BANDS_WITHOUT_CONSENT" ->
                (site.lastDay() == null ? "no consent ever" : "consent ended " + last) + ", and "
                        + (site.bandsUp() == 1 ? "a band hangs" : site.bandsUp() + " bands hang") + " there";
            default -> site.lastDay() == null ? "no consent" : "consent ended " + last;
        };
    }

    /** What to do about it. */
    public String act(Ground.Standing site) {
        return site.standing().equals("BANDS_WITHOUT_CONSENT")
                ? "Ask the owner today, or take the bands down."
                : "Ask the owner whether it goes on.";
    }
}

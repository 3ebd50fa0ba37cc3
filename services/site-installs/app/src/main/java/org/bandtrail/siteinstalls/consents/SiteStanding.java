package org.bandtrail.siteinstalls.consents;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * Whether work is allowed at a site on a day.
 *
 * @param siteId the site
 * @param siteName what people call it, its identity if it is not registered
 * @param bandsUp bands that hang there now
 * @param standing see {@link Standing}
 * @param consentId the consent that holds longest, null if none holds
 * @param lastDay its last day; if none holds, the last day of the one that ended last; null if there is none
 */
public record SiteStanding(
        String siteId,
        String siteName,
        long bandsUp,
        Standing standing,
        @Nullable String consentId,
        @Nullable LocalDate lastDay) {

    /** How a site stands. */
    public enum Standing {
        /** A consent holds, and longer than one is warned about. */
        HOLDS,
        /** The last consent ends within the days one is warned about. */
        ENDS_SOON,
        /** The last consent ends today. */
        ENDS_TODAY,
        /** No consent holds, and none hangs there that would need one. */
        NONE,
        /** No consent holds and bands hang there: a finding. */
        BANDS_WITHOUT_CONSENT
    }

    static Standing of(LocalDate day, boolean holds, @Nullable LocalDate lastDay, int warnDays, long bandsUp) {
        if (!holds) {
            return bandsUp > 0 ? Standing.BANDS_WITHOUT_CONSENT : Standing.NONE;
        }
        if (lastDay == null || ChronoUnit.DAYS.between(day, lastDay) > warnDays) {
            return Standing.HOLDS;
        }
        return lastDay.equals(day) ? Standing.ENDS_TODAY : Standing.ENDS_SOON;
    }

    /** Whether somebody must act: a consent is ending, or bands hang without one. */
    public boolean warns() {
        return standing != Standing.HOLDS && standing != Standing.NONE;
    }
}

package org.bandtrail.siteinstalls.consents;

import java.time.LocalDate;
import java.util.Locale;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.SiteId;

/** Why an entry about a consent, or a plan without one, is refused. */
public abstract sealed class ConsentRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private ConsentRefused(String message) {
        super(message);
    }

    /** The entry does not follow on what happened to the consent. */
    public static final class DoesNotFollow extends ConsentRefused {
        private static final long serialVersionUID = 1L;

        DoesNotFollow(ConsentId consentId, Consent.State state, String instead) {
            super("Consent [%s] is %s. %s".formatted(consentId, words(state), instead));
        }

        private static String words(Consent.State state) {
            return state == Consent.State.NEW ? "not known" : state.name().toLowerCase(Locale.ROOT);
        }

        @Override
        public String problem() {
            return "consent-does-not-follow";
        }
    }

    /** The consent was asked for another site. */
    public static final class OtherSite extends ConsentRefused {
        private static final long serialVersionUID = 1L;

        OtherSite(ConsentId consentId, SiteId asked, SiteId given) {
            super("Consent [%s] was asked for site [%s], not for [%s]. Enter a consent of its own for that site."
                    .formatted(consentId, asked, given));
        }

        @Override
        public String problem() {
            return "consent-of-other-site";
        }
    }

    /** The last day is before the first. */
    public static final class EndsBeforeItStarts extends ConsentRefused {
        private static final long serialVersionUID = 1L;

        EndsBeforeItStarts(ConsentId consentId, LocalDate from, LocalDate until) {
            super("Consent [%s] would end on %s, before it starts on %s. Check both days."
                    .formatted(consentId, until, from));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "consent-ends-before-it-starts";
        }
    }

    /** Something was to be planned on a site on a day on which nobody allowed it. */
    public static final class NothingHolds extends ConsentRefused {
        private static final long serialVersionUID = 1L;

        NothingHolds(SiteId siteId, LocalDate day, String activity, String known) {
            super(("Nothing is planned at site [%s] for %s: no consent covers %s on that day. %s Ask the owner and"
                            + " enter the consent, or choose another day.")
                    .formatted(siteId, day, activity, known));
        }

        @Override
        public String problem() {
            return "no-valid-consent";
        }
    }

    /** Something was to be planned on a closed site. */
    public static final class SiteClosed extends ConsentRefused {
        private static final long serialVersionUID = 1L;

        SiteClosed(SiteId siteId, LocalDate day, LocalDate closed) {
            super(
                    "Nothing is planned at site [%s] for %s: it is closed from %s. Choose an earlier day, or open it again."
                            .formatted(siteId, day, closed));
        }

        @Override
        public String problem() {
            return "site-closed";
        }
    }
}

package org.bandtrail.siteinstalls.sites;

import java.time.LocalDate;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.SiteId;
import org.jspecify.annotations.Nullable;

/** Why a wish about a site is refused. */
public abstract sealed class SiteRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private SiteRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class AlreadyRegistered extends SiteRefused {
        private static final long serialVersionUID = 1L;

        AlreadyRegistered(SiteId siteId, String name) {
            super("Site [%s] is registered already, as \"%s\". Use it, or choose another identity."
                    .formatted(siteId, name));
        }

        @Override
        public String problem() {
            return "site-already-registered";
        }
    }

    /** The name is missing or too long to be read in a list. */
    public static final class NameUnusable extends SiteRefused {
        private static final long serialVersionUID = 1L;

        NameUnusable(SiteId siteId, String name, int longest) {
            super("Site [%s] cannot be called \"%s\". Give a name of 1 to %d characters."
                    .formatted(siteId, name, longest));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "site-name-unusable";
        }
    }

    /** There is no such site to change. */
    public static final class NotRegistered extends SiteRefused {
        private static final long serialVersionUID = 1L;

        NotRegistered(SiteId siteId) {
            super("Site [%s] is not in the register. Register it first.".formatted(siteId));
        }

        @Override
        public String problem() {
            return "site-not-registered";
        }
    }

    /** A closed site was to be closed, or an open one opened. */
    public static final class AlreadyThus extends SiteRefused {
        private static final long serialVersionUID = 1L;

        AlreadyThus(SiteId siteId, @Nullable LocalDate closedOn) {
            super(
                    closedOn == null
                            ? "Site [%s] is open already. Nothing needs doing.".formatted(siteId)
                            : "Site [%s] is closed from %s already. Open it first to close it from another day."
                                    .formatted(siteId, closedOn));
        }

        @Override
        public String problem() {
            return "site-already-thus";
        }
    }

    /** Closing or opening a site without saying why. */
    public static final class ReasonMissing extends SiteRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(SiteId siteId) {
            super("Site [%s] is not closed or opened without a reason. Say why in a few words.".formatted(siteId));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "site-reason-missing";
        }
    }
}

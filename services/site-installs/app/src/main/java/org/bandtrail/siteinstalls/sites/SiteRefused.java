package org.bandtrail.siteinstalls.sites;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.SiteId;

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
}

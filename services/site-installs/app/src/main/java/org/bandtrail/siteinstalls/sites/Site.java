package org.bandtrail.siteinstalls.sites;

import java.util.List;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.sites.SiteCommand.RegisterSite;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteRegistered;
import org.jspecify.annotations.Nullable;

/**
 * One site of the register.
 *
 * @param siteId null before it is registered
 * @param name what people call it
 */
public record Site(@Nullable SiteId siteId, String name) {
    /** Before registration. */
    public static final Site NONE = new Site(null, "");

    private static final int LONGEST_NAME = 120;

    /**
     * Decides a command.
     *
     * @throws SiteRefused if the identity is taken or the name is missing or too long
     */
    public List<SiteEvent> decide(SiteCommand command) {
        return switch (command) {
            case RegisterSite register -> List.of(registered(register));
        };
    }

    private SiteRegistered registered(RegisterSite register) {
        if (siteId != null) {
            throw new SiteRefused.AlreadyRegistered(register.siteId(), name);
        }
        String given = register.name().strip();
        if (given.isEmpty() || given.length() > LONGEST_NAME) {
            throw new SiteRefused.NameUnusable(register.siteId(), given, LONGEST_NAME);
        }
        return new SiteRegistered(
                register.siteId(),
                given,
                register.point(),
                register.accessNotes().strip(),
                register.by(),
                register.when());
    }

    /** The site after the event; a second registration is a damaged history and throws. */
    public Site evolve(SiteEvent event) {
        return switch (event) {
            case SiteRegistered registered -> {
                if (siteId != null) {
                    throw new IllegalStateException("Site %s is registered twice.".formatted(siteId));
                }
                yield new Site(registered.siteId(), registered.name());
            }
        };
    }
}

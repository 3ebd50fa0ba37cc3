package org.bandtrail.siteinstalls.sites;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.boundaries.Boundary;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.bandtrail.siteinstalls.sites.SiteCommand.CloseSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.CorrectSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.OutlineSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.RegisterSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.ReopenSite;
import org.bandtrail.siteinstalls.sites.SiteCommand.SetHazards;
import org.bandtrail.siteinstalls.sites.SiteCommand.SetHours;
import org.bandtrail.siteinstalls.sites.SiteEvent.HazardsSet;
import org.bandtrail.siteinstalls.sites.SiteEvent.HoursSet;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteClosed;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteCorrected;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteOutlined;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteRegistered;
import org.bandtrail.siteinstalls.sites.SiteEvent.SiteReopened;
import org.jspecify.annotations.Nullable;

/**
 * One site of the register.
 *
 * @param siteId null before it is registered
 * @param details what is written down
 * @param boundary its ground, null if nobody drew it
 * @param hours when a crew may be there
 * @param hazards what can hurt somebody there
 * @param closedOn first day of no new work, null while it is open
 */
public record Site(
        @Nullable SiteId siteId,
        SiteDetails details,
        @Nullable Boundary boundary,
        OpeningHours hours,
        List<Hazard> hazards,
        @Nullable LocalDate closedOn) {
    /** Before registration. */
    public static final Site NONE =
            new Site(null, new SiteDetails("", null, ""), null, OpeningHours.ANY_TIME, List.of(), null);

    private static final int LONGEST_NAME = 120;

    /**
     * Decides a command.
     *
     * @throws SiteRefused if the identity is taken or not known, the name unusable, or a reason missing
     */
    public List<SiteEvent> decide(SiteCommand command) {
        if (siteId == null && !(command instanceof RegisterSite)) {
            throw new SiteRefused.NotRegistered(command.siteId());
        }
        return switch (command) {
            case RegisterSite register -> List.of(registered(register));
            case CorrectSite correct -> corrected(correct);
            case OutlineSite outline ->
                outline.boundary().equals(boundary)
                        ? List.of()
                        : List.of(new SiteOutlined(
                                outline.siteId(), boundary, outline.boundary(), outline.by(), outline.when()));
            case SetHours set ->
                set.hours().equals(hours)
                        ? List.of()
                        : List.of(new HoursSet(set.siteId(), hours, set.hours(), set.by(), set.when()));
            case SetHazards set ->
                set.hazards().equals(hazards)
                        ? List.of()
                        : List.of(new HazardsSet(set.siteId(), hazards, set.hazards(), set.by(), set.when()));
            case CloseSite close -> List.of(closed(close));
            case ReopenSite reopen -> List.of(reopened(reopen));
        };
    }

    private SiteRegistered registered(RegisterSite register) {
        if (siteId != null) {
            throw new SiteRefused.AlreadyRegistered(register.siteId(), details.name());
        }
        SiteDetails given =
                named(register.siteId(), new SiteDetails(register.name(), register.point(), register.accessNotes()));
        return new SiteRegistered(
                register.siteId(), given.name(), given.point(), given.accessNotes(), register.by(), register.when());
    }

    private List<SiteEvent> corrected(CorrectSite correct) {
        SiteDetails given = named(correct.siteId(), correct.details());
        return given.equals(details)
                ? List.of()
                : List.of(new SiteCorrected(correct.siteId(), details, given, correct.by(), correct.when()));
    }

    private static SiteDetails named(SiteId siteId, SiteDetails given) {
        if (given.name().isEmpty() || given.name().length() > LONGEST_NAME) {
            throw new SiteRefused.NameUnusable(siteId, given.name(), LONGEST_NAME);
        }
        return given;
    }

    private SiteClosed closed(CloseSite close) {
        if (closedOn != null) {
            throw new SiteRefused.AlreadyThus(close.siteId(), closedOn);
        }
        return new SiteClosed(
                close.siteId(), close.on(), reason(close.siteId(), close.reason()), close.by(), close.when());
    }

    private SiteReopened reopened(ReopenSite reopen) {
        if (closedOn == null) {
            throw new SiteRefused.AlreadyThus(reopen.siteId(), null);
        }
        return new SiteReopened(reopen.siteId(), reason(reopen.siteId(), reopen.reason()), reopen.by(), reopen.when());
    }

    private static String reason(SiteId siteId, String given) {
        if (given.isBlank()) {
            throw new SiteRefused.ReasonMissing(siteId);
        }
        return given.strip();
    }

    /** The site after the event; an event that cannot follow is a damaged history and throws. */
    public Site evolve(SiteEvent event) {
        if ((siteId == null) != (event instanceof SiteRegistered)) {
            throw new IllegalStateException("Site %s: %s cannot follow.".formatted(event.siteId(), event));
        }
        return switch (event) {
            case SiteRegistered it ->
                new Site(
                        it.siteId(),
                        new SiteDetails(it.name(), it.point(), it.accessNotes()),
                        null,
                        OpeningHours.ANY_TIME,
                        List.of(),
                        null);
            case SiteCorrected it -> new Site(siteId, it.became(), boundary, hours, hazards, closedOn);
            case SiteOutlined it -> new Site(siteId, details, it.boundary(), hours, hazards, closedOn);
            case HoursSet it -> new Site(siteId, details, boundary, it.hours(), hazards, closedOn);
            case HazardsSet it -> new Site(siteId, details, boundary, hours, it.hazards(), closedOn);
            case SiteClosed it -> new Site(siteId, details, boundary, hours, hazards, it.on());
            case SiteReopened it -> new Site(siteId, details, boundary, hours, hazards, null);
        };
    }
}

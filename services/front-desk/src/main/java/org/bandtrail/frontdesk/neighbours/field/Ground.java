package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What site-installs says about sites, consents and the map. Degrees are WGS 84, areas in dm2, lengths in mm. */
public final class Ground {
    private Ground() {}

    /** A site of the list. */
    public record Site(
            String siteId,
            String name,
            @Nullable Double lat,
            @Nullable Double lon,
            @Nullable String accessNotes,
            long trees,
            long bandsUp,
            @Nullable Long areaDm2,
            @Nullable Long hazards,
            @Nullable LocalDate closedOn) {}

    /** One site with all that is known; the boundary is rings of longitude and latitude. */
    public record Whole(
            Site site,
            @Nullable Instant registeredAt,
            @Nullable List<List<List<Double>>> boundary,
            @Nullable Long areaDm2,
            @Nullable Long perimeterMm,
            Hours hours,
            List<HazardHere> hazards,
            @Nullable LocalDate closedOn,
            @Nullable String closedWhy,
            List<Change> history) {}

    /** When one may be there; times as HH:mm:ss. */
    public record Hours(List<Weekly> weekly, List<SingleDay> exceptions) {}

    /** Open on a weekday. */
    public record Weekly(String day, String from, String until) {}

    /** A day that differs; closed without times. */
    public record SingleDay(
            LocalDate day, @Nullable String from, @Nullable String until, String reason) {}

    /** A hazard of a site with its kind. */
    public record HazardHere(Hazard hazard, HazardKind kind) {}

    /** A hazard as entered. */
    public record Hazard(String kind, String note) {}

    /** A kind of hazard with its caution. */
    public record HazardKind(
            String kind,
            String name,
            String caution,
            @Nullable String source) {}

    /** The kinds there are. */
    public record HazardKinds(List<HazardKind> rows) {}

    /** One change of a site. */
    public record Change(String what, Instant happenedAt, String by, String was, String became) {}

    /** What a service did with a change of a site, with what it corrected. */
    public record Changed(String siteId, @Nullable List<String> notes) {}

    /** What a consent allows. */
    public record Scope(List<String> activities, List<String> pests, String area) {}

    /** A consent as it stands. */
    public record Consent(
            String consentId,
            String siteId,
            String siteName,
            String state,
            Scope scope,
            String contactId,
            @Nullable Instant askedAt,
            @Nullable LocalDate validFrom,
            @Nullable LocalDate validUntil,
            @Nullable LocalDate withdrawnFrom,
            String note) {

        /** Whether it holds on a day. */
        public boolean holdsOn(LocalDate day) {
            return validFrom != null
                    && !validFrom.isAfter(day)
                    && (validUntil == null || !validUntil.isBefore(day))
                    && (withdrawnFrom == null || withdrawnFrom.isAfter(day));
        }

        /** Whether it can be renewed or withdrawn. */
        public boolean isGiven() {
            return state.equals("given");
        }

        /** Whether an answer is awaited. */
        public boolean isAsked() {
            return state.equals("asked");
        }
    }

    /** One line of a consent's history. */
    public record Step(String what, Instant happenedAt, String by, String note) {}

    /** A consent with its history. */
    public record WholeConsent(Consent consent, List<Step> history) {}

    /** The identity of a consent that was entered. */
    public record EnteredConsent(String consentId) {}

    /** Who may give a consent; empty once erased. */
    public record Contact(
            String contactId,
            String name,
            String phone,
            String email,
            String address,
            @Nullable Instant erasedAt) {}

    /** How a site stands on a day: HOLDS, ENDS_SOON, ENDS_TODAY, NONE, BANDS_WITHOUT_CONSENT. */
    public record Standing(
            String siteId,
            String siteName,
            long bandsUp,
            String standing,
            @Nullable String consentId,
            @Nullable LocalDate lastDay) {

        /** Whether somebody must act. */
        public boolean warns() {
            return !standing.equals("HOLDS") && !standing.equals("NONE");
        }
    }

    /** A page of standings. */
    public record Standings(List<Standing> rows, @Nullable String next, Warning warning) {}

    /** For how many days ahead one is warned. */
    public record Warning(LocalDate since, int days, String source, String reason) {}
}

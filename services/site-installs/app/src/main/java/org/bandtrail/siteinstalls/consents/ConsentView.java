package org.bandtrail.siteinstalls.consents;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One consent as it stands.
 *
 * @param consentId its identity
 * @param siteId its site
 * @param siteName what people call the site, its identity if it is not registered
 * @param state asked, given, declined or withdrawn
 * @param scope what it allows
 * @param contactId pseudonym of who was asked or gave it
 * @param askedAt when it was asked, null if it was given unasked
 * @param validFrom first day, null before it is given
 * @param validUntil last day, null if it has no end or is not given
 * @param withdrawnFrom first day on which it no longer holds, null if it was not taken back
 * @param note how it was given, or why not
 */
public record ConsentView(
        String consentId,
        String siteId,
        String siteName,
        String state,
        ConsentScope scope,
        String contactId,
        @Nullable Instant askedAt,
        @Nullable LocalDate validFrom,
        @Nullable LocalDate validUntil,
        @Nullable LocalDate withdrawnFrom,
        String note) {

    /**
     * One thing that happened to a consent.
     *
     * @param what in words
     * @param happenedAt when
     * @param by who entered it
     * @param note as entered
     */
    public record Step(String what, Instant happenedAt, String by, String note) {}

    /** A consent with its history, newest first. */
    public record Whole(ConsentView consent, List<Step> history) {}
}

package org.bandtrail.siteinstalls.consents;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.sites.Sites;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All consents, and the check that others make before they plan. */
@Repository
public class Consents {
    private static final String HOLDS = """
            valid_from <= :day AND (valid_until IS NULL OR valid_until >= :day)
            AND (withdrawn_from IS NULL OR withdrawn_from > :day)
            """;
    private final JdbcClient jdbc;
    private final Sites sites;

    Consents(JdbcClient jdbc, Sites sites) {
        this.jdbc = jdbc;
        this.sites = sites;
    }

    /**
     * The consent that holds at the site on the day, whatever it allows; of several the one that lasts longest.
     *
     * @return empty if none holds
     */
    public Optional<ConsentView> validOn(SiteId siteId, LocalDate day) {
        return holding(siteId, day).stream().findFirst();
    }

    /** The consent that covers the activity against the pest (null: any) at the site on the day. */
    public Optional<ConsentView> validOn(SiteId siteId, LocalDate day, Activity activity, @Nullable String pest) {
        return holding(siteId, day).stream()
                .filter(consent -> consent.scope().covers(activity, pest))
                .findFirst();
    }

    /**
     * Lets a plan through only where it is allowed.
     *
     * @return the consent the plan rests on
     * @throws ConsentRefused.SiteClosed if the site is closed on that day
     * @throws ConsentRefused.NothingHolds naming site, day, what is known and what to do
     */
    public ConsentView mustHold(SiteId siteId, LocalDate day, Activity activity, @Nullable String pest) {
        sites.closedOn(siteId).filter(closed -> !closed.isAfter(day)).ifPresent(closed -> {
            throw new ConsentRefused.SiteClosed(siteId, day, closed);
        });
        return validOn(siteId, day, activity, pest)
                .orElseThrow(() -> new ConsentRefused.NothingHolds(
                        siteId,
                        day,
                        pest == null ? activity.words() : "%s against %s".formatted(activity.words(), pest),
                        known(siteId, day)));
    }

    /** Consents that hold on {@code from} and end before {@code before}, the first to end first. */
    public List<ConsentView> expiringBefore(LocalDate from, LocalDate before) {
        return jdbc.sql(ConsentRows.SELECT + "WHERE " + HOLDS
                        + "AND least(valid_until, withdrawn_from - 1) < :before"
                        + " ORDER BY least(valid_until, withdrawn_from - 1), consent_id")
                .param("day", from)
                .param("before", before)
                .query(ConsentRows::view)
                .list();
    }

    /** All consents of a site, the newest start first. */
    public List<ConsentView> ofSite(SiteId siteId) {
        return jdbc.sql(ConsentRows.SELECT
                        + "WHERE consent.site_id = ? ORDER BY valid_from DESC NULLS FIRST, consent_id DESC")
                .param(siteId.value())
                .query(ConsentRows::view)
                .list();
    }

    /** One page by identity. */
    List<ConsentView> page(@Nullable String after, int limit) {
        return jdbc.sql(ConsentRows.SELECT + "WHERE consent_id > ? ORDER BY consent_id LIMIT ?")
                .params(after == null ? "" : after, limit)
                .query(ConsentRows::view)
                .list();
    }

    /** One consent with its history, newest first. */
    Optional<ConsentView.Whole> whole(ConsentId consentId) {
        return jdbc.sql(ConsentRows.SELECT + "WHERE consent_id = ?")
                .param(consentId.value())
                .query(ConsentRows::view)
                .optional()
                .map(consent -> new ConsentView.Whole(consent, steps(consentId)));
    }

    private List<ConsentView.Step> steps(ConsentId consentId) {
        return jdbc.sql("SELECT * FROM consent_step WHERE consent_id = ? ORDER BY happened_at DESC, position DESC")
                .param(consentId.value())
                .query((row, number) -> new ConsentView.Step(
                        row.getString("what"),
                        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                        row.getString("by_person"),
                        row.getString("note")))
                .list();
    }

    private List<ConsentView> holding(SiteId siteId, LocalDate day) {
        return jdbc.sql(ConsentRows.SELECT + "WHERE consent.site_id = :site AND " + HOLDS
                        + "ORDER BY least(valid_until, withdrawn_from - 1) DESC NULLS FIRST, consent_id")
                .param("site", siteId.value())
                .param("day", day)
                .query(ConsentRows::view)
                .list();
    }

    private String known(SiteId siteId, LocalDate day) {
        List<ConsentView> all = ofSite(siteId);
        return all.isEmpty()
                ? "None was ever entered."
                : "Known: %s."
                        .formatted(String.join(
                                "; ",
                                all.stream()
                                        .limit(3)
                                        .map(consent -> ConsentWords.of(consent, day))
                                        .toList()));
    }
}

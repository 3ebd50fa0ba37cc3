package org.bandtrail.frontdesk.neighbours.money;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about where the money comes from. */
public final class Funding {
    private Funding() {}

    /** A grant with the days it is good for. */
    public record Grant(String grantId, String name, Money amount, LocalDate from, LocalDate until) {}

    /** A grant and what was agreed about it, the oldest first. */
    public record WholeGrant(Grant grant, List<Agreed> history) {}

    /** Terms as they were agreed; the reason is null for the first. */
    public record Agreed(
            String name,
            Money amount,
            LocalDate from,
            LocalDate until,
            @Nullable String reason,
            String by,
            Instant at) {}

    /** Who pays for a site from a month on; no share if no grant pays. */
    public record SiteShares(String siteId, YearMonth from, List<Share> shares) {}

    /** Thousandths of a site's cost that one grant pays. */
    public record Share(String grantId, int permille) {}

    /**
     * What was spent of a grant in its own currency.
     *
     * @param outsideMinor of that, in months in which the grant was not good at all
     */
    public record GrantSpend(String grantId, String currency, long spentMinor, long outsideMinor) {}
}

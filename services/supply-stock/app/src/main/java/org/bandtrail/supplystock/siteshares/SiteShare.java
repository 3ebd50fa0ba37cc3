package org.bandtrail.supplystock.siteshares;

import java.time.YearMonth;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.supplystock.grants.GrantId;

/**
 * The rules of who pays for a site.
 *
 * @param versions shares by the month they begin
 */
public record SiteShare(Map<YearMonth, List<GrantShare>> versions) {
    /** Thousandths of the whole. */
    public static final int WHOLE = 1000;

    /** A site nobody pays for by grant. */
    public static final SiteShare NONE = new SiteShare(Map.of());

    /** Keeps its own copy. */
    public SiteShare {
        versions = Map.copyOf(versions);
    }

    /**
     * What a command makes happen.
     *
     * @throws SiteShareRefused if the wish cannot be granted
     */
    public List<SiteShareEvent> decide(SiteShareCommand command) {
        return switch (command) {
            case SiteShareCommand.SetShares set -> {
                if (set.closedThrough() != null && !set.from().isAfter(set.closedThrough())) {
                    throw new SiteShareRefused.SharesOfClosedMonth(set.siteId(), set.from(), set.closedThrough());
                }
                checked(set);
                if (set.shares().equals(versions.get(set.from()))) {
                    yield List.of();
                }
                yield List.of(
                        new SiteShareEvent.SharesSet(set.siteId(), set.from(), set.shares(), set.by(), set.occurred()));
            }
        };
    }

    private static void checked(SiteShareCommand.SetShares set) {
        Set<GrantId> named = new HashSet<>();
        long sum = 0;
        for (GrantShare share : set.shares()) {
            if (share.permille() < 1 || share.permille() > WHOLE) {
                throw new SiteShareRefused.ShareOutOfRange(set.siteId(), share);
            }
            if (!named.add(share.grantId())) {
                throw new SiteShareRefused.GrantNamedTwice(set.siteId(), share.grantId());
            }
            sum += share.permille();
        }
        if (!set.shares().isEmpty() && sum != WHOLE) {
            throw new SiteShareRefused.SharesDoNotAddUp(set.siteId(), sum);
        }
    }

    /** The shares after an event. */
    public SiteShare evolve(SiteShareEvent event) {
        return switch (event) {
            case SiteShareEvent.SharesSet set -> {
                Map<YearMonth, List<GrantShare>> more = new HashMap<>(versions);
                more.put(set.from(), set.shares());
                yield new SiteShare(more);
            }
        };
    }
}

package org.bandtrail.supplystock.siteshares;

import java.time.YearMonth;
import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.jspecify.annotations.Nullable;

/** What people ask about who pays for a site. */
public sealed interface SiteShareCommand {

    /**
     * Wish: from this month on the site is paid in these shares, until other shares begin. An empty list: by no grant.
     *
     * @param closedThrough the last closed month of the books, null if none is; its spend may not change any more
     */
    record SetShares(
            @TargetAggregateIdentifier SiteId siteId,
            YearMonth from,
            List<GrantShare> shares,
            @Nullable YearMonth closedThrough,
            PersonId by,
            Occurred occurred)
            implements SiteShareCommand {
        /** Keeps its own copy of the shares. */
        public SetShares {
            shares = List.copyOf(shares);
        }
    }
}

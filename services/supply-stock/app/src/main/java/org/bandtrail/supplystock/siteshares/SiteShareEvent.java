package org.bandtrail.supplystock.siteshares;

import java.time.YearMonth;
import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;

/** What happened to who pays for a site. */
public sealed interface SiteShareEvent {
    /** The site. */
    SiteId siteId();

    /** Shares were set from a month on; shares that began in the same month before are replaced. */
    @StoredAs("site-share.set")
    @Revision("1")
    record SharesSet(SiteId siteId, YearMonth from, List<GrantShare> shares, PersonId by, Occurred occurred)
            implements SiteShareEvent {
        /** Keeps its own copy of the shares. */
        public SharesSet {
            shares = List.copyOf(shares);
        }
    }
}

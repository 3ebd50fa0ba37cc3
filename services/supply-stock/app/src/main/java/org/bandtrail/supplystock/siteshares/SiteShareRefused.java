package org.bandtrail.supplystock.siteshares;

import java.time.YearMonth;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.grants.GrantId;
import org.bandtrail.supplystock.grants.GrantRow;

/** Why a wish about who pays for a site is refused. */
public abstract sealed class SiteShareRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private SiteShareRefused(String message) {
        super(message);
    }

    @Override
    public int status() {
        return 422;
    }

    /** The parts are not the whole. */
    public static final class SharesDoNotAddUp extends SiteShareRefused {
        private static final long serialVersionUID = 1L;

        SharesDoNotAddUp(SiteId site, long sum) {
            super("The shares of site [%s] add up to [%d] thousandths, not to %d. Change one of them by %+d."
                    .formatted(site, sum, SiteShare.WHOLE, SiteShare.WHOLE - sum));
        }
    }

    /** One grant pays once. */
    public static final class GrantNamedTwice extends SiteShareRefused {
        private static final long serialVersionUID = 1L;

        GrantNamedTwice(SiteId site, GrantId grant) {
            super("Grant [%s] is named twice for site [%s]. Give it one share.".formatted(grant, site));
        }
    }

    /** A share of nothing, or of more than everything. */
    public static final class ShareOutOfRange extends SiteShareRefused {
        private static final long serialVersionUID = 1L;

        ShareOutOfRange(SiteId site, GrantShare share) {
            super("Grant [%s] cannot pay [%d] thousandths of site [%s]. Give 1 to %d, or leave it out."
                    .formatted(share.grantId(), share.permille(), site, SiteShare.WHOLE));
        }
    }

    /** What a closed month cost whom does not change. */
    public static final class SharesOfClosedMonth extends SiteShareRefused {
        private static final long serialVersionUID = 1L;

        SharesOfClosedMonth(SiteId site, YearMonth from, YearMonth closedThrough) {
            super("Shares of site [%s] cannot begin in [%s]: months are closed through [%s]. Begin in [%s] or later."
                    .formatted(site, from, closedThrough, closedThrough.plusMonths(1)));
        }

        @Override
        public int status() {
            return 409;
        }
    }

    /** A grant pays only while it is good. */
    public static final class GrantNotGoodThen extends SiteShareRefused {
        private static final long serialVersionUID = 1L;

        GrantNotGoodThen(SiteId site, YearMonth month, GrantRow grant) {
            super(
                    "Grant [%s] cannot pay for site [%s] in [%s]: it is good from %s to %s. Choose another month or grant."
                            .formatted(grant.grantId(), site, month, grant.from(), grant.until()));
        }
    }
}

package org.bandtrail.supplystock.closechecks;

import java.time.YearMonth;
import java.util.List;
import org.bandtrail.eventexchange.overview.FeedStatus;
import org.bandtrail.eventexchange.overview.FeedStatuses;
import org.bandtrail.supplystock.periods.CheckFound;
import org.bandtrail.supplystock.periods.CloseCheck;
import org.springframework.stereotype.Component;

/** Everything that the field services have told so far was heard. */
@Component
class FeedsCheck implements CloseCheck {
    private static final String READING = "reading";
    private final FeedStatuses feeds;

    FeedsCheck(FeedStatuses feeds) {
        this.feeds = feeds;
    }

    @Override
    public String name() {
        return "unread-feeds";
    }

    @Override
    public int order() {
        return 40;
    }

    @Override
    public CheckFound look(YearMonth month) {
        // While reading goes on the lag changes by the second, so it is no part of the fingerprint.
        List<String> behind = feeds.all().stream()
                .filter(feed -> !feed.state().equals(READING) || feed.lag() > 0)
                .map(FeedStatus::feed)
                .toList();
        return CheckFound.of(
                name(),
                behind,
                "Everything the field services told so far has been heard.",
                "Field services not heard to the end: %d (" + String.join(", ", behind) + ").");
    }
}

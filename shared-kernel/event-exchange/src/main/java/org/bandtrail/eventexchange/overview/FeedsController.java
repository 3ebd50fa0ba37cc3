package org.bandtrail.eventexchange.overview;

import java.util.List;
import java.util.Map;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** Shows how far this service has read the others, and lets a person resume a feed that has stopped. */
@RestController
class FeedsController {
    private final FeedStatuses statuses;

    FeedsController(FeedStatuses statuses) {
        this.statuses = statuses;
    }

    /** Answers each foreign feed with its position, what is still ahead and what holds it up. */
    @GetMapping("/feeds")
    Map<String, List<FeedStatus>> feeds() {
        return Map.of("rows", statuses.all());
    }

    /**
     * Lets a stopped feed try the same event again. Nothing is skipped: if the event is still at fault, the feed stops
     * there again. A feed that is not stopped is left as it is.
     */
    @PostMapping("/feeds/{feed}/resume")
    Map<String, Object> resume(@PathVariable String feed, ActingPerson person) {
        FeedStatus found = statuses.all().stream()
                .filter(status -> status.feed().equals(feed))
                .findFirst()
                .orElseThrow(() -> new NoSuch("feed", feed));
        return Map.of(
                "feed",
                feed,
                "resumed",
                statuses.resume(found.source(), person.id().value()));
    }
}

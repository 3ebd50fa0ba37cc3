package org.bandtrail.eventexchange;

import java.util.List;
import java.util.Map;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** Shows how far this service has read the others, and lets a person resume a feed that has stopped. */
@RestController
class FeedsController {
    private final FeedStatuses statuses;
    private final FeedPositions positions;

    FeedsController(FeedStatuses statuses, FeedPositions positions) {
        this.statuses = statuses;
        this.positions = positions;
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
    ResponseEntity<?> resume(@PathVariable String feed, ActingPerson person) {
        return statuses.all().stream()
                .filter(status -> status.feed().equals(feed))
                .findFirst()
                .<ResponseEntity<?>>map(status -> ResponseEntity.ok(Map.of(
                        "feed",
                        feed,
                        "resumed",
                        positions.resume(status.source(), person.id().value()))))
                .orElseGet(() -> ResponseEntity.of(ProblemDetail.forStatusAndDetail(
                                HttpStatus.NOT_FOUND, "Feed [%s] is not read here.".formatted(feed)))
                        .build());
    }
}

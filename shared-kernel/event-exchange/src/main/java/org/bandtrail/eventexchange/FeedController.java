package org.bandtrail.eventexchange;

import java.time.Duration;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/**
 * Serves this service's outbox to the others, a page at a time. A request for what is not there yet waits; it costs a
 * thread while it does, so services run with virtual threads ({@code spring.threads.virtual.enabled}).
 */
@RestController
class FeedController {
    /** Position to ask after next. */
    static final String NEXT = "Bandtrail-Feed-Next";
    /** Highest position published so far. */
    static final String HEAD = "Bandtrail-Feed-Head";

    private static final int MOST_EVENTS = 1000;
    private static final int LONGEST_WAIT_SECONDS = 30;

    private final OutboxPages outbox;

    FeedController(OutboxPages outbox) {
        this.outbox = outbox;
    }

    /**
     * Answers the events after a position as a CloudEvents batch, with the next position in a header.
     *
     * @param after last position the reader has dealt with, 0 at the beginning
     * @param limit most events to answer, 1 to 1000
     * @param waitSeconds how long to wait for the first event, 0 to 30
     */
    @GetMapping(path = "/feed", produces = EnvelopeJson.BATCH)
    ResponseEntity<byte[]> feed(
            @RequestParam(defaultValue = "0") long after,
            @RequestParam(defaultValue = "200") int limit,
            @RequestParam(defaultValue = "0") int waitSeconds)
            throws InterruptedException {
        within("after", after, 0, Long.MAX_VALUE);
        within("limit", limit, 1, MOST_EVENTS);
        within("waitSeconds", waitSeconds, 0, LONGEST_WAIT_SECONDS);
        List<Arrival.Readable> page = outbox.after(after, limit, Duration.ofSeconds(waitSeconds));
        long next = page.isEmpty() ? after : page.getLast().position();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(EnvelopeJson.BATCH))
                .header(NEXT, Long.toString(next))
                .header(HEAD, Long.toString(Math.max(next, outbox.head())))
                .body(EnvelopeJson.writeBatch(page));
    }

    private static void within(String parameter, long value, long least, long most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    "%s [%d] must be between %d and %d.".formatted(parameter, value, least, most));
        }
    }
}

package org.bandtrail.supplystock.discrepancies;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/**
 * The rules of waiting: with a reason, until a day ahead, and not for ever.
 *
 * @param until the day on which the question comes back, null if it never waited
 */
public record Waiting(@Nullable LocalDate until) {
    /** A question that never waited. */
    public static final Waiting UNKNOWN = new Waiting(null);

    /** A quarter: longer than any telephone stays away (common practice, no source). */
    static final int LONGEST_DAYS = 92;

    /** Names the question about a reel or batch at a place. */
    public static String question(String material, String id, Place place) {
        return "%s %s %s".formatted(material, id, place);
    }

    /**
     * What a command makes happen.
     *
     * @throws WaitingRefused if the wish cannot be granted
     */
    public List<WaitingEvent> decide(WaitingCommand command) {
        return switch (command) {
            case WaitingCommand.Wait wait -> {
                LocalDate today = LocalDate.ofInstant(wait.occurred().recorded(), ZoneOffset.UTC);
                if (wait.reason().isBlank()) {
                    throw new WaitingRefused.WaitingWithoutReason(wait.id());
                }
                if (!wait.until().isAfter(today) || wait.until().isAfter(today.plusDays(LONGEST_DAYS))) {
                    throw new WaitingRefused.DayUnfit(wait.until(), today, LONGEST_DAYS);
                }
                yield List.of(new WaitingEvent.Waits(
                        wait.question(),
                        wait.material(),
                        wait.id(),
                        wait.place(),
                        wait.quantity(),
                        wait.until(),
                        wait.reason().strip(),
                        wait.by(),
                        wait.occurred()));
            }
        };
    }

    /** The question after an event. */
    public Waiting evolve(WaitingEvent event) {
        return switch (event) {
            case WaitingEvent.Waits waits -> new Waiting(waits.until());
        };
    }
}

package org.bandtrail.local.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Rows that are sent together: one kind, one day, one crew (or the depots).
 *
 * @param day the day the facts reach the books, which for late ones is not the day they happened
 * @param crewId the crew, or empty for depot work
 */
record Chunk(LocalDate day, Kind kind, String crewId, List<Row> rows) {
    /** By day, then kind, then crew. */
    static final Comparator<Chunk> IN_TIME =
            Comparator.comparing(Chunk::day).thenComparing(Chunk::kind).thenComparing(Chunk::crewId);

    /** When the facts reach the books: in the evening, after the last of them has happened. */
    Instant arrival() {
        return day.atTime(21, 0).toInstant(ZoneOffset.UTC);
    }

    /** For the progress display, such as {@code 14 May: visits}. */
    String words() {
        String month = day.getMonth().name();
        return "%d %s%s: %s"
                .formatted(
                        day.getDayOfMonth(),
                        month.charAt(0),
                        month.substring(1, 3).toLowerCase(Locale.ROOT),
                        kind.words());
    }
}

package org.bandtrail.local.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

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

    /** For the progress display, such as {@code 14 May: visits}. */
    String words() {
        return "%d %s: %s"
                .formatted(
                        day.getDayOfMonth(),
                        day.getMonth().name().charAt(0) + day.getMonth().name().substring(1, 3).toLowerCase(java.util.Locale.ROOT),
                        kind.words());
    }
}

package org.bandtrail.siteinstalls.openinghours;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * When a crew may be on a site.
 *
 * @param weekly rows by weekday; a weekday may have several; none at all is any time
 * @param exceptions days that differ; an exception replaces the rows of its weekday
 */
public record OpeningHours(List<Weekly> weekly, List<SingleDay> exceptions) {
    /** Any time. */
    public static final OpeningHours ANY_TIME = new OpeningHours(List.of(), List.of());

    /**
     * Sorts both.
     *
     * @throws IllegalArgumentException naming a day that stands there twice as an exception
     */
    public OpeningHours {
        weekly = weekly.stream()
                .sorted(Comparator.comparing(Weekly::day).thenComparing(Weekly::from))
                .toList();
        exceptions =
                exceptions.stream().sorted(Comparator.comparing(SingleDay::day)).toList();
        for (int index = 1; index < exceptions.size(); index++) {
            if (exceptions.get(index).day().equals(exceptions.get(index - 1).day())) {
                throw new IllegalArgumentException("The exception for %s is there twice. Keep one."
                        .formatted(exceptions.get(index).day()));
            }
        }
    }

    /**
     * Open on every such weekday from one time to another.
     *
     * @param from first minute
     * @param until when everybody must have left
     */
    public record Weekly(DayOfWeek day, LocalTime from, LocalTime until) {
        /**
         * Refuses times in the wrong order.
         *
         * @throws IllegalArgumentException naming day and times
         */
        public Weekly {
            inOrder(day.getDisplayName(TextStyle.FULL, Locale.ENGLISH), from, until);
        }
    }

    /**
     * One day that differs.
     *
     * @param day which
     * @param from first minute, null if closed all day
     * @param until when everybody must have left, null if closed all day
     * @param reason for example a school holiday
     */
    public record SingleDay(
            LocalDate day,
            @Nullable LocalTime from,
            @Nullable LocalTime until,
            String reason) {
        /**
         * Refuses half a time and times in the wrong order.
         *
         * @throws IllegalArgumentException naming day and times
         */
        public SingleDay {
            if ((from == null) != (until == null)) {
                throw new IllegalArgumentException(
                        "The exception for %s has one time. Give both, or none for a closed day.".formatted(day));
            }
            if (from != null && until != null) {
                inOrder(day.toString(), from, until);
            }
            reason = reason.strip();
        }
    }

    /**
     * Whether somebody may be there.
     *
     * @param open yes or no
     * @param why in words, with the hours of that day
     */
    public record Answer(boolean open, String why) {}

    /** Whether somebody may be there at that time of the site's clock. */
    public Answer at(LocalDateTime time) {
        LocalDate day = time.toLocalDate();
        for (SingleDay single : exceptions) {
            if (single.day().equals(day)) {
                return at(time.toLocalTime(), single);
            }
        }
        if (weekly.isEmpty()) {
            return new Answer(true, "No opening hours are kept for this site.");
        }
        String name = day.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        List<Weekly> rows =
                weekly.stream().filter(row -> row.day() == day.getDayOfWeek()).toList();
        if (rows.isEmpty()) {
            return new Answer(false, "Closed on %s.".formatted(name));
        }
        String hours =
                rows.stream().map(row -> row.from() + " to " + row.until()).collect(Collectors.joining(" and "));
        boolean open = rows.stream().anyMatch(row -> within(time.toLocalTime(), row.from(), row.until()));
        return new Answer(open, "On %s open from %s.".formatted(name, hours));
    }

    private static Answer at(LocalTime time, SingleDay single) {
        LocalTime from = single.from();
        LocalTime until = single.until();
        String reason = single.reason().isEmpty() ? "" : " (%s)".formatted(single.reason());
        if (from == null || until == null) {
            return new Answer(false, "Closed on %s%s.".formatted(single.day(), reason));
        }
        return new Answer(
                within(time, from, until), "On %s open from %s to %s%s.".formatted(single.day(), from, until, reason));
    }

    private static boolean within(LocalTime time, LocalTime from, LocalTime until) {
        return !time.isBefore(from) && time.isBefore(until);
    }

    private static void inOrder(String day, LocalTime from, LocalTime until) {
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException(
                    "On %s it would open at %s and close at %s. Check both; hours past midnight are two rows."
                            .formatted(day, from, until));
        }
    }
}

package org.bandtrail.frontdesk.wording;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Days in words near today, as dates further away. The zone is that of the yards. */
public final class Days {
    private static final DateTimeFormatter THIS_YEAR = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter OTHER_YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter FULL =
            DateTimeFormatter.ofPattern("EEEE d MMMM yyyy, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter ENTERED = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ENGLISH);

    private final Clock clock;
    private final ZoneId zone;

    /** Days as seen from this clock in this zone. */
    public Days(Clock clock, ZoneId zone) {
        this.clock = clock;
        this.zone = zone;
    }

    /** The day alone: today, yesterday, in 3 days, last Tuesday, 4 May, 4 May 2024. */
    public String day(@Nullable Instant instant) {
        return instant == null ? "–" : day(instant.atZone(zone).toLocalDate());
    }

    /** The day alone, see {@link #day(Instant)}. */
    public String day(@Nullable LocalDate date) {
        if (date == null) {
            return "–";
        }
        LocalDate today = LocalDate.now(clock.withZone(zone));
        long away = ChronoUnit.DAYS.between(today, date);
        if (away >= -6 && away <= 6) {
            return near(away, date);
        }
        return (date.getYear() == today.getYear() ? THIS_YEAR : OTHER_YEAR).format(date);
    }

    private static String near(long away, LocalDate date) {
        if (away == 0) {
            return "today";
        }
        if (away == -1) {
            return "yesterday";
        }
        if (away == 1) {
            return "tomorrow";
        }
        return (away < 0 ? "last " : "on ") + WEEKDAY.format(date);
    }

    /** The day, and the time of day when it is today or yesterday. */
    public String moment(@Nullable Instant instant) {
        if (instant == null) {
            return "–";
        }
        ZonedDateTime local = instant.atZone(zone);
        long away = ChronoUnit.DAYS.between(LocalDate.now(clock.withZone(zone)), local.toLocalDate());
        return away == 0 || away == -1 ? day(instant) + " " + HOUR.format(local) : day(instant);
    }

    /** Weekday, date and time in full, for titles. */
    public String full(@Nullable Instant instant) {
        return instant == null ? "" : FULL.format(instant.atZone(zone));
    }

    /** A month of the books, for example May 2026. */
    public String month(@Nullable YearMonth month) {
        return month == null ? "–" : MONTH.format(month);
    }

    /** Today in the zone of the yards. */
    public LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }

    /** How late something is, in whole days; zero if it is not due yet. */
    public long daysLate(@Nullable Instant due) {
        return due == null
                ? 0
                : Math.max(
                        0,
                        ChronoUnit.DAYS.between(due.atZone(zone).toLocalDate(), LocalDate.now(clock.withZone(zone))));
    }

    /** Now, as the value of a date and time field. */
    public String nowEntered() {
        return ENTERED.format(ZonedDateTime.now(clock.withZone(zone)));
    }

    /**
     * The instant of a date and time field; now if the field is empty.
     *
     * @throws java.time.format.DateTimeParseException if the text is not a date and time
     */
    public Instant entered(@Nullable String text) {
        if (text == null || text.isBlank()) {
            return clock.instant();
        }
        return java.time.LocalDateTime.parse(text, DateTimeFormatter.ISO_LOCAL_DATE_TIME)
                .atZone(zone)
                .toInstant();
    }
}

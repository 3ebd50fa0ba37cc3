package org.bandtrail.local.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** One crew's working day: the clock that moves on with each job, and whether its facts reach the books late. */
final class WorkDay {
    final LocalDate date;
    private final String crewId;
    private Instant now;

    /** Starts the day a quarter to eight by the place's summer clock (UTC-4) plus some minutes. */
    WorkDay(LocalDate date, String crewId, Dice dice) {
        this.date = date;
        this.crewId = crewId;
        this.now = Instant.parse(date + "T11:45:00Z").plus(dice.between(0, 14), ChronoUnit.MINUTES);
    }

    /** The moment a job that takes this many minutes is done. */
    String after(int minutes) {
        now = now.plus(minutes, ChronoUnit.MINUTES);
        return now.toString();
    }

    /** When the telephone sends today's facts, if not at once. */
    String sentAt() {
        boolean silent = crewId.equals(Mistakes.SILENT_CREW)
                && !date.isBefore(Mistakes.SILENT_FROM)
                && !date.isAfter(Mistakes.SILENT_TO);
        return silent ? Mistakes.SILENT_SENT_AT : "";
    }

    boolean is(LocalDate day, String crew) {
        return date.equals(day) && crewId.equals(crew);
    }

    /** The bag this crew fills this week. */
    String bagId() {
        return "BAG-" + crewId.charAt(2) + "-" + String.format(java.util.Locale.ROOT, "%02d", SeasonWriter.week(date));
    }
}

package org.bandtrail.frontdesk.spend;

import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.Map;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.bandtrail.frontdesk.wording.Days;
import org.jspecify.annotations.Nullable;

/**
 * The months a page is about.
 *
 * @param from first month, null from the beginning
 * @param through last month, null until now
 */
public record Stretch(@Nullable YearMonth from, @Nullable YearMonth through) {
    private static final String ALL = "all";

    /**
     * As it was asked: nothing means the running month, {@code all} the whole time.
     *
     * @throws UnfitForm naming the text that is no month
     */
    static Stretch asked(String from, String through, YearMonth running) {
        if (from.equals(ALL)) {
            return new Stretch(null, null);
        }
        if (from.isBlank() && through.isBlank()) {
            return new Stretch(running, running);
        }
        return new Stretch(from.isBlank() ? null : month(from), through.isBlank() ? null : month(through));
    }

    private static YearMonth month(String written) {
        try {
            return YearMonth.parse(written.strip());
        } catch (DateTimeParseException unreadable) {
            throw new UnfitForm("[%s] is not a month. Write the year and the month, like 2026-05.".formatted(written));
        }
    }

    /** Whether it is the whole time. */
    public boolean all() {
        return from == null && through == null;
    }

    /** In words, for example {@code in May 2026}. */
    public String words(Days days) {
        if (all()) {
            return "so far";
        }
        if (from != null && from.equals(through)) {
            return "in " + days.month(from);
        }
        return (from == null ? "" : "from " + days.month(from) + " ")
                + (through == null ? "until now" : "through " + days.month(through));
    }

    /** The end of an address that asks for the same months. */
    public String query() {
        return all()
                ? "from=" + ALL
                : "from=" + (from == null ? "" : from) + "&through=" + (through == null ? "" : through);
    }

    /** What to ask of supply-stock. */
    Map<String, String> asked(String by) {
        Map<String, String> asked = new HashMap<>(Map.of("by", by));
        if (from != null) {
            asked.put("from", from.toString());
        }
        if (through != null) {
            asked.put("through", through.toString());
        }
        return asked;
    }
}

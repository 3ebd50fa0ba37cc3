package org.bandtrail.frontdesk.sites;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bandtrail.frontdesk.neighbours.field.Ground;
import org.jspecify.annotations.Nullable;

/** What is known of a site, as values of the fields in which it is changed. */
public final class HourFields {
    private static final int MINUTES = 5;

    private HourFields() {}

    /** A day that differs, as fields; without a day it is the empty one at the end. */
    public record Single(int number, @Nullable LocalDate day, String from, String until, String reason) {}

    /** One opening of a weekday as fields, times as HH:mm; empty times if the site is closed then. */
    public record Opening(String key, String label, String day, String from, String until) {}

    /** Every opening of every weekday; a weekday without any has an empty one, so that nothing is lost by saving. */
    public static List<Opening> weekly(Ground.Hours hours, List<String> weekdays) {
        List<Opening> fields = new ArrayList<>();
        for (String day : weekdays) {
            String name = day.charAt(0) + day.substring(1).toLowerCase(Locale.ROOT);
            List<Ground.Weekly> rows =
                    hours.weekly().stream().filter(row -> row.day().equals(day)).toList();
            for (Ground.Weekly row : rows) {
                String again = row.equals(rows.getFirst()) ? "" : " again";
                fields.add(
                        new Opening(day + fields.size(), name + again, day, minutes(row.from()), minutes(row.until())));
            }
            if (rows.isEmpty()) {
                fields.add(new Opening(day + fields.size(), name, day, "", ""));
            }
        }
        return fields;
    }

    /** The days that differ, and one more that is empty. */
    public static List<Single> exceptions(Ground.Hours hours) {
        List<Single> fields = new ArrayList<>();
        for (Ground.SingleDay row : hours.exceptions()) {
            fields.add(new Single(fields.size(), row.day(), minutes(row.from()), minutes(row.until()), row.reason()));
        }
        fields.add(new Single(fields.size(), null, "", "", ""));
        return fields;
    }

    /** The note on a hazard of this kind, or null if the site has none. */
    public static @Nullable String hazard(List<Ground.HazardHere> hazards, String kind) {
        return hazards.stream()
                .filter(here -> here.hazard().kind().equals(kind))
                .findFirst()
                .map(here -> here.hazard().note())
                .orElse(null);
    }

    private static String minutes(@Nullable String time) {
        return time == null ? "" : time.substring(0, MINUTES);
    }
}

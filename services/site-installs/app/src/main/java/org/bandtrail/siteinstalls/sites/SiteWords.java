package org.bandtrail.siteinstalls.sites;

import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bandtrail.siteinstalls.boundaries.Boundary;
import org.bandtrail.siteinstalls.hazards.Hazard;
import org.bandtrail.siteinstalls.openinghours.OpeningHours;
import org.jspecify.annotations.Nullable;

/** Values of a site in words, for its history. */
final class SiteWords {
    private static final long DM2_PER_M2 = 100;

    private SiteWords() {}

    static String details(SiteDetails details) {
        Point point = details.point();
        String where = point == null
                ? "no point"
                : "%s, %s".formatted(Point.degrees(point.latitudeE7()), Point.degrees(point.longitudeE7()));
        return Stream.of(details.name(), where, details.accessNotes())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
    }

    static String boundary(@Nullable Boundary boundary) {
        return boundary == null
                ? ""
                : "%d corners, %d square metres"
                        .formatted(boundary.rings().getFirst().size() - 1, boundary.areaDm2() / DM2_PER_M2);
    }

    static String hours(OpeningHours hours) {
        Stream<String> weekly = hours.weekly().stream()
                .map(row -> "%s %s to %s"
                        .formatted(row.day().getDisplayName(TextStyle.FULL, Locale.ENGLISH), row.from(), row.until()));
        Stream<String> single = hours.exceptions().stream()
                .map(row -> row.from() == null
                        ? "%s closed".formatted(row.day())
                        : "%s %s to %s".formatted(row.day(), row.from(), row.until()));
        String words = Stream.concat(weekly, single).collect(Collectors.joining(", "));
        return words.isEmpty() ? "any time" : words;
    }

    static String hazards(List<Hazard> hazards) {
        return hazards.stream()
                .map(hazard ->
                        hazard.note().isEmpty() ? hazard.kind() : "%s: %s".formatted(hazard.kind(), hazard.note()))
                .collect(Collectors.joining("; "));
    }
}

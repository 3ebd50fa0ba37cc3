package org.bandtrail.siteinstalls.consents;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a consent allows.
 *
 * @param activities what may be done, at least one; kept in the order of {@link Activity}
 * @param pests EPPO codes of the pests it is for, empty for any; kept in alphabetical order
 * @param area which part of the site in words, empty for the whole site
 */
public record ConsentScope(List<Activity> activities, List<String> pests, String area) {
    private static final Pattern EPPO = Pattern.compile("[A-Z]{5,6}");
    private static final int LONGEST_AREA = 300;

    /**
     * Puts both lists in order.
     *
     * @throws IllegalArgumentException naming what is missing, unknown or too long
     */
    public ConsentScope {
        activities = activities.stream().distinct().sorted().toList();
        pests = pests.stream()
                .map(code -> code.strip().toUpperCase(Locale.ROOT))
                .filter(code -> !code.isEmpty())
                .distinct()
                .sorted()
                .toList();
        area = area.strip();
        if (activities.isEmpty()) {
            throw new IllegalArgumentException("The consent allows nothing. Say what may be done, for example BANDS.");
        }
        for (String code : pests) {
            if (!EPPO.matcher(code).matches()) {
                throw new IllegalArgumentException(
                        "Pest [%s] is not an EPPO code. Give 5 or 6 letters, for example LYCMDE.".formatted(code));
            }
        }
        if (area.length() > LONGEST_AREA) {
            throw new IllegalArgumentException(
                    "The area has %d characters. Describe it with at most %d.".formatted(area.length(), LONGEST_AREA));
        }
    }

    /** Whether the activity is allowed, against this pest; null asks for the activity alone. */
    public boolean covers(Activity activity, @Nullable String pest) {
        return activities.contains(activity) && (pest == null || pests.isEmpty() || pests.contains(pest));
    }

    /** For example {@code bands and guards, traps against LYCMDE}. */
    public String words() {
        String what = activities.stream().map(Activity::words).collect(Collectors.joining(", "));
        return pests.isEmpty() ? what : "%s against %s".formatted(what, String.join(", ", pests));
    }
}

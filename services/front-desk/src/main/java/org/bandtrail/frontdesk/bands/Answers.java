package org.bandtrail.frontdesk.bands;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.jspecify.annotations.Nullable;

/** The words for what a visit can say. */
final class Answers {
    /** Life stages that are counted, in the order in which they appear through a season. */
    static final Map<String, String> STAGES = stages();

    /** The four different answers of a visit. */
    static final Map<String, String> WORDS = Map.of(
            "read", "read",
            "not-found", "tree or band not found",
            "not-read", "seen but not read",
            "band-missing", "band gone from the tree");

    /** What somebody should know about a visit or a teardown that was stored. */
    static final Map<String, String> FLAGS = Map.of(
            "band-not-known-yet",
                    "Nobody has told yet that this band was fitted. Its material is booked when somebody does.",
            "catch-is-lower-bound", "The band was too full to catch on, so the true number is at least the count.",
            "catch-without-reading", "Insects were counted although the band was not read; they count nowhere.",
            "recorded-late", "This was entered long after it happened.",
            "clock-ahead", "The time lies in the future; a clock runs ahead.",
            "band-already-down", "The band had come down before.",
            "out-of-order", "Something done later was known already; places were worked out anew.",
            "bag-not-named", "Nobody named the waste bag; the waste waits under the name of the person.");

    private Answers() {}

    private static Map<String, String> stages() {
        Map<String, String> stages = new LinkedHashMap<>();
        stages.put("egg-mass", "egg mass");
        stages.put("instar-1", "first instar");
        stages.put("instar-2", "second instar");
        stages.put("instar-3", "third instar");
        stages.put("instar-4", "fourth instar");
        stages.put("adult", "adult");
        return Collections.unmodifiableMap(stages);
    }

    /** An answer in words. */
    static String words(String answer) {
        return WORDS.getOrDefault(answer, answer);
    }

    /** Flags in words, in the form in which the page shows them. */
    static List<Installs.Flag> flags(@Nullable List<String> flags) {
        return flags == null
                ? List.of()
                : flags.stream()
                        .map(flag -> new Installs.Flag(flag, FLAGS.getOrDefault(flag, flag)))
                        .toList();
    }
}

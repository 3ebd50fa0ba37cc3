package org.bandtrail.frontdesk.bands;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

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

    private Answers() {}

    private static Map<String, String> stages() {
        Map<String, String> stages = new LinkedHashMap<>();
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
}

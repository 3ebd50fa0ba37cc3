package org.bandtrail.frontdesk.trees;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.TreesTwice.Pair;
import org.bandtrail.frontdesk.wording.Figures;

/** Why two trees look like one, in words. */
final class PairWords {
    private PairWords() {}

    /** What speaks for it and what against it, one short sentence after another. */
    static String why(Pair pair, Figures figures) {
        List<String> words = new ArrayList<>();
        if (pair.sameTag()) {
            words.add("The same tag at one site.");
        }
        if (pair.distanceMm() != null) {
            words.add(
                    pair.distanceMm() == 0
                            ? "The very same place."
                            : "%s apart.".formatted(figures.run(pair.distanceMm())));
        } else if (pair.first().lat() == null && pair.second().lat() == null) {
            words.add("Neither has a place.");
        } else {
            words.add("Only one has a place.");
        }
        words.add(girths(pair, figures));
        if (speciesDiffer(pair)) {
            words.add("Their species differ: %s and %s."
                    .formatted(pair.first().speciesCode(), pair.second().speciesCode()));
        }
        return String.join(" ", words);
    }

    private static String girths(Pair pair, Figures figures) {
        if (pair.girthDifferenceMm() == null) {
            return pair.first().girthMm() == null && pair.second().girthMm() == null
                    ? "Neither was measured."
                    : "Only one was measured.";
        }
        return pair.girthDifferenceMm() == 0
                ? "The same girth."
                : "Girths differ by %s.".formatted(figures.piece(pair.girthDifferenceMm()));
    }

    private static boolean speciesDiffer(Pair pair) {
        String one = pair.first().speciesCode();
        String other = pair.second().speciesCode();
        return one != null && other != null && !one.equals(other);
    }
}

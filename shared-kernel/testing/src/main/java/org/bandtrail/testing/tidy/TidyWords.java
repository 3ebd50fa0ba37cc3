package org.bandtrail.testing.tidy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What people leave behind: notes to themselves, traces for debugging, halves of a merge, paths of their machine. */
final class TidyWords {
    // Patterns are put together here so that this file does not find itself.
    private static final Map<Pattern, String> LEFTOVERS = new LinkedHashMap<>(Map.of(
            Pattern.compile("\\b(TO" + "DO|FIX" + "ME|HA" + "CK)\\b(?!.{0,3}(#|issue )\\d)"),
            "a note to oneself. Do it, or write the number of its issue behind it",
            Pattern.compile("print" + "StackTrace\\("),
            "a trace nobody reads. Throw it on, or log it",
            Pattern.compile("^(<{7}|>{7}|\\|{7})( |$)"),
            "half of a merge",
            Pattern.compile("(?<![\\w.])/(root|home/\\w+|work|tmp/w|Users/\\w+)/\\w"),
            "a path of one machine"));

    private TidyWords() {}

    static List<Complaint> leftovers(SourceTree tree) {
        List<Complaint> complaints = new ArrayList<>();
        for (SourceFile file : tree.files()) {
            List<String> lines = file.lines();
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                int number = i + 1;
                LEFTOVERS.forEach((pattern, advice) -> {
                    if (pattern.matcher(line).find()) {
                        complaints.add(new Complaint(
                                "leftover", file.path(), "line %d has %s: %s".formatted(number, advice, line.strip())));
                    }
                });
            }
        }
        return complaints;
    }
}

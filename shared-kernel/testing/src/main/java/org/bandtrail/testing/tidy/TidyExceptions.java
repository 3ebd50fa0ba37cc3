package org.bandtrail.testing.tidy;

import java.util.ArrayList;
import java.util.List;

/**
 * What is not tidy yet, one a line: {@code rule | path | size | reason}. The path may end in {@code **}. The size is a
 * ratchet: above it the complaint comes back. A line that excuses nothing any more is a complaint itself, so the list
 * only gets shorter. Lines that begin with # are comments.
 */
record TidyExceptions(List<Excused> all) {
    private record Excused(String rule, String path, int size, String reason) {
        private boolean covers(Complaint complaint) {
            boolean same = path.endsWith("**")
                    ? complaint.path().startsWith(path.substring(0, path.length() - 2))
                    : complaint.path().equals(path);
            return same && complaint.rule().equals(rule) && complaint.size() <= size;
        }
    }

    static TidyExceptions parse(List<String> lines) {
        List<Excused> all = new ArrayList<>();
        for (String line : lines) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] parts = line.split("\\s*\\|\\s*", 4);
            if (parts.length < 4 || parts[3].length() < 15) {
                throw new AssertionError(
                        "Exception [%s] is not rule | path | size | reason, the reason in some words.".formatted(line));
            }
            all.add(new Excused(parts[0].strip(), parts[1], Integer.parseInt(parts[2]), parts[3]));
        }
        return new TidyExceptions(all);
    }

    /** The complaints that are not excused, and the exceptions nobody needs. */
    List<String> apply(List<Complaint> complaints) {
        List<String> remaining = new ArrayList<>();
        for (Complaint complaint : complaints) {
            if (all.stream().noneMatch(excused -> excused.covers(complaint))) {
                remaining.add(complaint.toString());
            }
        }
        for (Excused excused : all) {
            if (complaints.stream().noneMatch(excused::covers)) {
                remaining.add("exceptions: %s %s is tidy now or worse than excused; correct its line"
                        .formatted(excused.rule(), excused.path()));
            }
        }
        return remaining;
    }
}

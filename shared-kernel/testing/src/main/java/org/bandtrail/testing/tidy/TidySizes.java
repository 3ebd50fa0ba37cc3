package org.bandtrail.testing.tidy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Budgets: a file of code has at most 200 lines, a line 120 characters, a package about twenty files. */
final class TidySizes {
    static final int FILE_LINES = 200;
    static final int LINE_LENGTH = 120;
    static final int PACKAGE_FILES = 25;

    private static final Set<String> CODE = Set.of("java", "js", "css", "sql");
    private static final Set<String> NARROW = Set.of("java", "js", "sql");

    private TidySizes() {}

    static List<Complaint> longFiles(SourceTree tree) {
        List<Complaint> complaints = new ArrayList<>();
        for (SourceFile file : tree.files()) {
            int lines = file.lines().size();
            if (CODE.contains(file.ending()) && lines > FILE_LINES) {
                complaints.add(new Complaint(
                        "file",
                        file.path(),
                        lines,
                        "%d lines, budget %d. It is two things".formatted(lines, FILE_LINES)));
            }
        }
        return complaints;
    }

    /** Addresses cannot be broken; a line that holds one may be longer. */
    static List<Complaint> longLines(SourceTree tree) {
        List<Complaint> complaints = new ArrayList<>();
        for (SourceFile file : tree.files()) {
            if (!NARROW.contains(file.ending())) {
                continue;
            }
            List<String> tooLong = file.lines().stream()
                    .filter(line -> line.length() > LINE_LENGTH && !line.contains("://"))
                    .toList();
            if (!tooLong.isEmpty()) {
                complaints.add(new Complaint(
                        "line",
                        file.path(),
                        tooLong.size(),
                        "%d lines above %d characters, the first: %s"
                                .formatted(
                                        tooLong.size(),
                                        LINE_LENGTH,
                                        tooLong.getFirst().strip())));
            }
        }
        return complaints;
    }

    static List<Complaint> fullPackages(SourceTree tree) {
        Map<String, Long> counts = tree.files().stream()
                .filter(file -> file.isJava() && file.path().contains("src/main/java/"))
                .filter(file -> !file.name().equals("package-info.java"))
                .collect(Collectors.groupingBy(SourceFile::folder, Collectors.counting()));
        List<Complaint> complaints = new ArrayList<>();
        counts.forEach((folder, count) -> {
            if (count > PACKAGE_FILES) {
                complaints.add(new Complaint(
                        "package",
                        folder,
                        count.intValue(),
                        "%d files, budget %d. It is two features".formatted(count, PACKAGE_FILES)));
            }
        });
        return complaints;
    }
}

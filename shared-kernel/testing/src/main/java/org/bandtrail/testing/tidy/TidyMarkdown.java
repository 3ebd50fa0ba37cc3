package org.bandtrail.testing.tidy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pages for people: their links lead somewhere, and the map in the README shows the rooms that are there. */
final class TidyMarkdown {
    private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)\\s]+)(?:\\s+\"[^\"]*\")?\\)");
    private static final Pattern MAP_ROW = Pattern.compile("^\\| *`([a-z0-9/-]+?)/?` *\\|", Pattern.MULTILINE);

    private TidyMarkdown() {}

    /** Links within the repository; others are not followed, a test must not depend on the net. */
    static List<Complaint> brokenLinks(SourceTree tree) {
        List<Complaint> complaints = new ArrayList<>();
        for (SourceFile file : tree.files()) {
            if (!file.ending().equals("md")) {
                continue;
            }
            Matcher link = LINK.matcher(file.text());
            while (link.find()) {
                String target = link.group(1).split("#", 2)[0];
                if (target.isEmpty() || target.contains("://") || target.startsWith("mailto:")) {
                    continue;
                }
                Path there = tree.root().resolve(file.folder()).resolve(target);
                if (!Files.exists(there)) {
                    complaints.add(new Complaint("link", file.path(), "[%s] leads nowhere".formatted(target)));
                }
            }
        }
        return complaints;
    }

    /**
     * The map is the table of README.md whose rows begin with a folder in back quotes. Every folder of the top level is
     * on it, itself or by the folders in it; where one of those is shown, all are; and all that is shown is there.
     */
    static List<Complaint> mapDiffers(SourceTree tree) {
        Set<String> shown = map(tree);
        List<Complaint> complaints = new ArrayList<>();
        if (shown.isEmpty()) {
            complaints.add(new Complaint("map", "README.md", "there is no map: a table with a folder in each row"));
            return complaints;
        }
        for (String folder : tree.folders()) {
            if (!folder.startsWith(".") && !shown.contains(folder) && isRoom(folder, shown)) {
                complaints.add(new Complaint("map", "README.md", "the map lacks %s".formatted(folder)));
            }
        }
        for (String folder : shown) {
            if (!tree.folders().contains(folder)) {
                complaints.add(
                        new Complaint("map", "README.md", "the map shows %s, which is not there".formatted(folder)));
            }
        }
        return complaints;
    }

    /** A folder of the top level of which nothing is shown, or one whose neighbour in the same folder is shown. */
    private static boolean isRoom(String folder, Set<String> shown) {
        int slash = folder.lastIndexOf('/');
        if (slash < 0) {
            return shown.stream().noneMatch(other -> other.startsWith(folder + "/"));
        }
        String above = folder.substring(0, slash + 1);
        return shown.stream().anyMatch(other -> other.startsWith(above) && other.indexOf('/', above.length()) < 0);
    }

    private static Set<String> map(SourceTree tree) {
        Set<String> shown = new TreeSet<>();
        for (SourceFile file : tree.files()) {
            if (file.path().equals("README.md")) {
                MAP_ROW.matcher(file.text()).results().forEach(row -> shown.add(row.group(1)));
            }
        }
        return shown;
    }
}

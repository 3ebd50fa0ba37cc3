package org.bandtrail.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pages for people: their links lead somewhere, and the map in the README shows the rooms that are there. */
final class TidyMarkdown {
    private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)\\s]+)(?:\\s+\"[^\"]*\")?\\)");
    private static final Pattern MAP_LINE = Pattern.compile("( *)([a-z][a-z0-9-]*)/(?:\\s.*)?");
    private static final Set<String> HOUSES = Set.of("shared-kernel", "services", "deploy");

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
     * The map is the indented list of folders in a fenced block of README.md that names {@code shared-kernel/}; each line
     * is a folder with a slash and what it is for. It shows every folder of the top level and every room of
     * shared-kernel, services and deploy, and nothing that is not there.
     */
    static List<Complaint> mapDiffers(SourceTree tree) {
        Set<String> shown = map(tree);
        List<Complaint> complaints = new ArrayList<>();
        if (shown.isEmpty()) {
            complaints.add(new Complaint("map", "README.md", "there is no map of the rooms in a fenced block"));
            return complaints;
        }
        Set<String> rooms = new TreeSet<>();
        for (String folder : tree.folders()) {
            String[] parts = folder.split("/");
            boolean room = parts.length == 1 || parts.length == 2 && HOUSES.contains(parts[0]);
            if (room && !folder.startsWith(".")) {
                rooms.add(folder);
            }
        }
        for (String room : rooms) {
            if (!shown.contains(room)) {
                complaints.add(new Complaint("map", "README.md", "the map lacks %s/".formatted(room)));
            }
        }
        for (String folder : shown) {
            if (!tree.folders().contains(folder)) {
                complaints.add(
                        new Complaint("map", "README.md", "the map shows %s/, which is not there".formatted(folder)));
            }
        }
        return complaints;
    }

    private static Set<String> map(SourceTree tree) {
        Set<String> shown = new TreeSet<>();
        for (SourceFile file : tree.files()) {
            if (file.path().equals("README.md")) {
                String[] blocks = file.text().split("(?m)^```.*$");
                for (int i = 1; i < blocks.length; i += 2) {
                    if (blocks[i].contains("shared-kernel/")) {
                        addFolders(blocks[i], shown);
                    }
                }
            }
        }
        return shown;
    }

    private static void addFolders(String block, Set<String> shown) {
        Deque<String> above = new ArrayDeque<>();
        Deque<Integer> indents = new ArrayDeque<>();
        block.lines().forEach(line -> {
            Matcher folder = MAP_LINE.matcher(line);
            if (folder.matches()) {
                int indent = folder.group(1).length();
                while (!indents.isEmpty() && indents.peek() >= indent) {
                    indents.pop();
                    above.pop();
                }
                String path = above.isEmpty() ? folder.group(2) : above.peek() + "/" + folder.group(2);
                above.push(path);
                indents.push(indent);
                shown.add(path);
            }
        });
    }
}

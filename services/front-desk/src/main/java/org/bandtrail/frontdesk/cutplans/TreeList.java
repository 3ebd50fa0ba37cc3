package org.bandtrail.frontdesk.cutplans;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.field.Plan;
import org.bandtrail.frontdesk.pages.UnfitForm;

/** Trees as somebody types them: one on a line in the order of the walk, {@code x 2} behind it for two bands. */
final class TreeList {
    private static final Pattern LINE = Pattern.compile("(\\S+)(?:\\s+x\\s*(\\d))?");

    private TreeList() {}

    /**
     * The trees as the service reads them.
     *
     * @throws UnfitForm naming the line that is no tree
     */
    static List<Map<String, Object>> read(String typed) {
        List<Map<String, Object>> trees = new ArrayList<>();
        for (String line : typed.split("\\R")) {
            if (line.isBlank()) {
                continue;
            }
            Matcher tree = LINE.matcher(line.strip());
            if (!tree.matches()) {
                throw new UnfitForm(
                        "[%s] is no tree. Write one tree on a line, such as T-0104, or T-0104 x 2 for two bands."
                                .formatted(line.strip()));
            }
            Map<String, Object> one = new HashMap<>(Map.of("treeId", tree.group(1)));
            if (tree.group(2) != null) {
                one.put("bands", Integer.parseInt(tree.group(2)));
            }
            trees.add(one);
        }
        if (trees.isEmpty()) {
            throw new UnfitForm("No tree is on the list. Write one on each line, in the order of the walk.");
        }
        return trees;
    }

    /** The trees of a work plan as somebody would type them. */
    static String of(Plan.Whole plan) {
        return plan.walk().stream()
                .map(line -> line.bands() == 1 ? line.treeId() : "%s x %d".formatted(line.treeId(), line.bands()))
                .collect(Collectors.joining("\n"));
    }
}

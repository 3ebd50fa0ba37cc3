package org.bandtrail.frontdesk.kits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.jspecify.annotations.Nullable;

/**
 * A tree list as people paste or scan it, one tree a line: the tree, then its girth or tape length if the books do not
 * know the girth, then {@code x2} for two bands. {@code T-1301}, {@code T-1301 1260 mm}, {@code T-1301; 4 ft 1 in x2}.
 */
final class TreeLines {
    private static final Pattern LINE =
            Pattern.compile("(?<tree>[^\\s,;]+)[\\s,;]*(?<length>.*?)(?:\\s*[xX×]\\s*(?<bands>\\d))?");

    private final boolean girths;
    private final String unit;
    private final Function<String, @Nullable Long> girthOf;

    /**
     * @param girths whether the lengths are girths; otherwise they are ready lengths of tape
     * @param unit of a bare number
     * @param girthOf what the books know of a tree's girth in mm, or null
     */
    TreeLines(boolean girths, String unit, Function<String, @Nullable Long> girthOf) {
        this.girths = girths;
        this.unit = unit;
        this.girthOf = girthOf;
    }

    /** The lines as the service takes them; blank lines are left out. */
    List<Map<String, Object>> read(String text) {
        List<Map<String, Object>> lines = new ArrayList<>();
        text.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(line -> lines.add(line(line)));
        if (lines.isEmpty()) {
            throw new UnfitForm("The list is empty. Paste or scan the trees, one a line.");
        }
        return lines;
    }

    private Map<String, Object> line(String text) {
        Matcher parts = LINE.matcher(text);
        if (!parts.matches()) {
            throw new UnfitForm("The line [%s] is not a tree. Write it like T-1301 1260 mm.".formatted(text));
        }
        Map<String, Object> line = new HashMap<>();
        String tree = parts.group("tree").toUpperCase(Locale.ROOT);
        line.put("treeId", tree);
        String length = parts.group("length").strip();
        if (!length.isEmpty()) {
            line.put(girths ? "girth" : "tape", Form.withUnit(length, unit));
        }
        if (length.isEmpty() || !girths) {
            Long known = girthOf.apply(tree);
            if (known != null) {
                line.put("girth", known + " mm");
            } else if (length.isEmpty()) {
                throw new UnfitForm("The books know no girth of tree [%s]. Measure it and write it behind the tree."
                        .formatted(tree));
            }
        }
        if (parts.group("bands") != null) {
            line.put("bands", Integer.valueOf(parts.group("bands")));
        }
        return line;
    }
}

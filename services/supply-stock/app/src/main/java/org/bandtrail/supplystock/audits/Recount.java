package org.bandtrail.supplystock.audits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Compares the sums as they are kept with the same sums counted from every row. */
final class Recount {
    private Recount() {}

    /** One line for each sum: kept on the left, counted on the right; a sum that one side lacks is 0 there. */
    static List<Law> of(String what, String unit, BookSums kept, BookSums counted) {
        List<Law> lines = new ArrayList<>();
        lines.add(new Law(what + ": moves", "moves that are kept = rows", kept.moves(), counted.moves(), "moves"));
        compare(lines, what + ", moved", unit, kept.flow(), counted.flow());
        compare(lines, what + ", balance", unit, kept.there(), counted.there());
        compare(lines, what + ", charges", "minor units", kept.paid(), counted.paid());
        compare(lines, what + ", money", "minor units", kept.money(), counted.money());
        return lines;
    }

    /** The lines of the sums by place. */
    static List<Law> places(String what, Map<String, Map<String, Long>> kept, Map<String, Map<String, Long>> counted) {
        List<Law> lines = new ArrayList<>();
        compare(lines, what + ", by place", "fingerprint", kept, counted);
        return lines;
    }

    private static void compare(
            List<Law> lines,
            String what,
            String unit,
            Map<String, Map<String, Long>> kept,
            Map<String, Map<String, Long>> counted) {
        TreeSet<String> groups = new TreeSet<>(kept.keySet());
        groups.addAll(counted.keySet());
        for (String group : groups) {
            Map<String, Long> left = kept.getOrDefault(group, Map.of());
            Map<String, Long> right = counted.getOrDefault(group, Map.of());
            TreeSet<String> sums = new TreeSet<>(left.keySet());
            sums.addAll(right.keySet());
            for (String sum : sums) {
                long one = left.getOrDefault(sum, 0L);
                long other = right.getOrDefault(sum, 0L);
                if (one != 0 || other != 0) {
                    lines.add(new Law(
                            "%s %s: %s".formatted(what, group, sum),
                            "sum that is kept = sum of the rows",
                            one,
                            other,
                            unit));
                }
            }
        }
    }
}

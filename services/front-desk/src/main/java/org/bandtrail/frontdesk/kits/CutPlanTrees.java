package org.bandtrail.frontdesk.kits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bandtrail.frontdesk.neighbours.field.Cuts;
import org.jspecify.annotations.Nullable;

/**
 * The trees of a cut plan in the tree list of a kit. A line as the plan filled it in takes the plan's lengths and reels;
 * a line that somebody changed is read like any other.
 */
final class CutPlanTrees {
    private final Cuts.Parts parts;
    private final Map<String, Cuts.Tree> lines = new LinkedHashMap<>();
    private final List<String> leftOut = new ArrayList<>();

    CutPlanTrees(Cuts.Parts parts) {
        this.parts = parts;
        for (Cuts.Tree tree : parts.trees()) {
            boolean cut = parts.materials().stream()
                    .allMatch(of -> pieces(of, tree).allMatch(piece -> of.reelOf(piece) != null));
            if (cut) {
                lines.put(tree.bands() == 1 ? tree.treeId() : "%s x%d".formatted(tree.treeId(), tree.bands()), tree);
            } else {
                leftOut.add(tree.treeId());
            }
        }
    }

    /** The list as the form shows it, in the order of the walk. */
    String text() {
        return String.join("\n", lines.keySet());
    }

    /** Trees that are not on it because the plan does not cut all their pieces. */
    List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    /** The lines as the service takes them; others reads those that are not as the plan filled them in. */
    List<Map<String, Object>> read(String typed, TreeLines others) {
        List<Map<String, Object>> read = new ArrayList<>();
        typed.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(line -> {
            Cuts.Tree tree = planned(line);
            read.addAll(tree == null ? others.read(line) : List.of(line(tree)));
        });
        return read.isEmpty() ? others.read(typed) : read;
    }

    /** The reels of the plan for the lines that are as it filled them in. */
    List<Map<String, Object>> reels(String typed) {
        return typed.lines()
                .map(String::strip)
                .map(this::planned)
                .filter(Objects::nonNull)
                .flatMap(tree -> parts.materials().stream().flatMap(of -> reels(of, tree)))
                .toList();
    }

    private Cuts.@Nullable Tree planned(String line) {
        return lines.entrySet().stream()
                .filter(each -> each.getKey().equalsIgnoreCase(line))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(null);
    }

    private static Stream<Map<String, Object>> reels(Cuts.Material of, Cuts.Tree tree) {
        Map<String, Long> counts = pieces(of, tree)
                .map(of::reelOf)
                .collect(Collectors.groupingBy(String::valueOf, LinkedHashMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .map(reel -> Map.of(
                        "treeId",
                        tree.treeId(),
                        "kind",
                        of.kind(),
                        "reelId",
                        reel.getKey(),
                        "pieces",
                        reel.getValue()));
    }

    private Map<String, Object> line(Cuts.Tree tree) {
        Map<String, Object> line = new HashMap<>();
        line.put("treeId", tree.treeId());
        line.put("girth", tree.girthMm() + " mm");
        line.put("bands", tree.bands());
        line.put("fasteners", tree.fasteners());
        parts.materials()
                .forEach(of -> pieces(of, tree)
                        .findFirst()
                        .ifPresent(piece -> line.put(of.kind().toLowerCase(Locale.ROOT), piece.lengthMm() + " mm")));
        return line;
    }

    private static Stream<Cuts.Piece> pieces(Cuts.Material of, Cuts.Tree tree) {
        return of.pieces().filter(piece -> piece.treeId().equals(tree.treeId()));
    }
}

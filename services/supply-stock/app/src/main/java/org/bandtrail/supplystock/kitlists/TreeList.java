package org.bandtrail.supplystock.kitlists;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/** Turns a list of trees, in the order the crew walks, into what each tree takes. */
public final class TreeList {
    private static final int MOST_BANDS = 9;

    private TreeList() {}

    /**
     * One line of the list. A length or number that is given counts; what is not given follows from the girth.
     *
     * @param bands how many bands, null for one
     */
    public record Line(
            TreeId treeId,
            @Nullable Length girth,
            @Nullable Length tape,
            @Nullable Length mesh,
            @Nullable Pieces fasteners,
            @Nullable Integer bands) {}

    /**
     * What the trees take of the kinds of material the kit holds.
     *
     * @throws IllegalArgumentException naming the tree and what it lacks, or a tree that is twice in the list
     */
    public static List<TreeNeed> needs(List<Line> lines, KitRule rule, Set<MaterialKind> kinds) {
        List<TreeNeed> needs = new ArrayList<>();
        Set<TreeId> seen = new HashSet<>();
        for (Line line : lines) {
            if (!seen.add(line.treeId())) {
                throw new IllegalArgumentException(
                        "Tree [%s] is twice in the list. Keep one line and say how many bands."
                                .formatted(line.treeId()));
            }
            needs.add(need(line, rule, kinds));
        }
        return List.copyOf(needs);
    }

    private static TreeNeed need(Line line, KitRule rule, Set<MaterialKind> kinds) {
        int bands = line.bands() == null ? 1 : line.bands();
        if (bands < 1 || bands > MOST_BANDS) {
            throw new IllegalArgumentException(
                    "Tree [%s] cannot have [%d] bands. Use 1 to %d.".formatted(line.treeId(), bands, MOST_BANDS));
        }
        positive(line, "girth", line.girth());
        positive(line, "tape length", line.tape());
        positive(line, "mesh length", line.mesh());
        Length tape = kinds.contains(MaterialKind.TAPE)
                ? given(line, line.tape(), "tape length", girth -> rule.tape(girth))
                : Length.ZERO;
        Length mesh = kinds.contains(MaterialKind.MESH)
                ? given(line, line.mesh(), "mesh length", girth -> rule.mesh(girth))
                : Length.ZERO;
        Pieces fasteners = kinds.contains(MaterialKind.FASTENER)
                ? given(
                        line,
                        line.fasteners(),
                        "number of fasteners",
                        girth -> Pieces.of(bands * rule.fasteners(girth).count()))
                : Pieces.ZERO;
        return new TreeNeed(line.treeId(), line.girth(), bands, tape, mesh, fasteners);
    }

    private static <T> T given(
            Line line, @Nullable T given, String what, java.util.function.Function<Length, T> fromGirth) {
        if (given != null) {
            return given;
        }
        Length girth = line.girth();
        if (girth == null) {
            throw new IllegalArgumentException(
                    "Tree [%s] has neither a girth nor a %s. Measure the girth, or give the %s."
                            .formatted(line.treeId(), what, what));
        }
        return fromGirth.apply(girth);
    }

    private static void positive(Line line, String what, @Nullable Length length) {
        if (length != null && !length.isPositive()) {
            throw new IllegalArgumentException(
                    "Tree [%s] has a %s of [%s]. Measure it again.".formatted(line.treeId(), what, length));
        }
    }
}

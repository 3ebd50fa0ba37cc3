package org.bandtrail.supplystock.kits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bandtrail.kernel.MaterialKind;
import org.jspecify.annotations.Nullable;

/**
 * What the counter collects and the crew cuts.
 *
 * @param collect reels and batches in the order of the bins; what lies loose comes last
 * @param walk trees in the order the crew walks, each with the reel its pieces come from
 */
record PickSheet(KitLife kit, List<KitLife.Picked> collect, List<Stop> walk) {

    /**
     * One tree.
     *
     * @param tapeReel reel the tape is cut from, two or more with commas between if a cut plan says so, or null if the
     *     kit has none; likewise meshReel
     * @param tapeMm each piece; likewise meshMm
     */
    record Stop(
            String treeId,
            @Nullable Long girthMm,
            int bands,
            @Nullable String tapeReel,
            long tapeMm,
            @Nullable String meshReel,
            long meshMm,
            long fasteners) {}

    static PickSheet of(KitLife kit, List<KitLife.Tree> trees, List<KitLife.Picked> picks) {
        List<KitLife.Picked> collect = picks.stream()
                .sorted(Comparator.comparing(
                                KitLife.Picked::bin, Comparator.nullsLast(Comparator.<String>naturalOrder()))
                        .thenComparing(KitLife.Picked::kind)
                        .thenComparing(KitLife.Picked::id))
                .toList();
        List<Stop> walk = new ArrayList<>();
        for (KitLife.Tree tree : trees) {
            walk.add(new Stop(
                    tree.treeId(),
                    tree.girthMm(),
                    tree.bands(),
                    reelFor(tree, MaterialKind.TAPE, picks),
                    tree.tapeMm(),
                    reelFor(tree, MaterialKind.MESH, picks),
                    tree.meshMm(),
                    tree.fasteners()));
        }
        return new PickSheet(kit, collect, walk);
    }

    private static @Nullable String reelFor(KitLife.Tree tree, MaterialKind kind, List<KitLife.Picked> picks) {
        return picks.stream()
                .filter(pick -> pick.kind() == kind
                        && pick.cuts().stream().anyMatch(cut -> cut.treeId().equals(tree.treeId())))
                .map(KitLife.Picked::id)
                .reduce((one, other) -> one + ", " + other)
                .orElse(null);
    }
}

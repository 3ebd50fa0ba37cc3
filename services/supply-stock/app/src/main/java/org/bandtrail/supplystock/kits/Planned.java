package org.bandtrail.supplystock.kits;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.supplystock.kitlists.Pick;
import org.jspecify.annotations.Nullable;

/**
 * A plan as it is answered over HTTP; lengths in millimetres.
 *
 * @param tapeMm tape of all trees; likewise meshMm
 * @param fasteners pieces of all trees
 * @param source where the figures of the rule come from
 */
record Planned(
        long tapeMm,
        long meshMm,
        long fasteners,
        String source,
        List<KitLife.Tree> trees,
        List<KitLife.Picked> picks,
        List<KitPlan.Lacking> lacking,
        List<KitPlan.PassedOver> passedOver,
        List<KitPlan.Otherwise> otherwise) {

    static Planned of(KitPlan plan) {
        List<KitLife.Tree> trees = plan.trees().stream()
                .map(need -> new KitLife.Tree(
                        need.tree().value(),
                        mm(need.girth()),
                        need.bands(),
                        need.tape().mm(),
                        need.mesh().mm(),
                        need.fasteners().count()))
                .toList();
        return new Planned(
                trees.stream().mapToLong(tree -> tree.bands() * tree.tapeMm()).sum(),
                trees.stream().mapToLong(tree -> tree.bands() * tree.meshMm()).sum(),
                trees.stream().mapToLong(KitLife.Tree::fasteners).sum(),
                plan.rule().source(),
                trees,
                plan.picks().stream().map(Planned::picked).toList(),
                plan.lacking(),
                plan.passedOver(),
                plan.otherwise());
    }

    private static @Nullable Long mm(@Nullable Length length) {
        return length == null ? null : length.mm();
    }

    private static KitLife.Picked picked(Pick pick) {
        return new KitLife.Picked(
                pick.id(),
                pick.material().value(),
                pick.kind(),
                pick.place().bin(),
                pick.there(),
                pick.quantity(),
                pick.cuts().stream()
                        .map(cut -> new KitLife.CutFor(
                                cut.tree().value(), cut.pieces(), cut.each().mm()))
                        .toList());
    }
}

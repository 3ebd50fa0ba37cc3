package org.bandtrail.siteinstalls.cutplans;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.consents.Activity;
import org.bandtrail.siteinstalls.consents.Consents;
import org.bandtrail.siteinstalls.devices.PieceList;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Looks up the trees of an order and lets only those through that something can be cut for. */
@Component
final class TreesToCut {
    private static final int MOST_BANDS = 9;
    private final Trees trees;
    private final Consents consents;

    TreesToCut(Trees trees, Consents consents) {
        this.trees = trees;
        this.consents = consents;
    }

    /**
     * The trees in the order of the walk.
     *
     * @param pieces what one device takes for a girth
     * @throws CutPlanRefused.TreeUnfit naming the tree and why
     * @throws org.bandtrail.siteinstalls.consents.ConsentRefused if the owner of a site does not allow bands on the day
     */
    List<PlannedTree> of(CutOrder order, Function<Length, PieceList> pieces) {
        Map<TreeId, TreeView> known = trees.registered(
                order.trees().stream().map(CutOrder.Wanted::treeId).toList());
        Set<TreeId> seen = new HashSet<>();
        Set<SiteId> sites = new HashSet<>();
        List<PlannedTree> planned = order.trees().stream()
                .map(each -> {
                    if (!seen.add(each.treeId())) {
                        throw new CutPlanRefused.TreeUnfit(
                                each.treeId(), "it is on the list twice; give it more bands");
                    }
                    return planned(each, known.get(each.treeId()), pieces);
                })
                .toList();
        planned.forEach(tree -> {
            if (sites.add(tree.siteId())) {
                consents.mustHold(
                        tree.siteId(), order.day(), Activity.BANDS, order.use().pest());
            }
        });
        return planned;
    }

    private static PlannedTree planned(
            CutOrder.Wanted wanted, @Nullable TreeView tree, Function<Length, PieceList> pieces) {
        if (tree == null) {
            throw new CutPlanRefused.TreeUnfit(wanted.treeId(), "it is not in the register; register it first");
        }
        if (tree.mergedInto() != null) {
            throw new CutPlanRefused.TreeUnfit(
                    wanted.treeId(), "it is the same tree as [%s]; plan that one".formatted(tree.mergedInto()));
        }
        if (tree.goneAt() != null) {
            throw new CutPlanRefused.TreeUnfit(wanted.treeId(), "it is gone (%s)".formatted(tree.goneHow()));
        }
        if (wanted.bands() < 1 || wanted.bands() > MOST_BANDS) {
            throw new CutPlanRefused.TreeUnfit(
                    wanted.treeId(), "[%d] bands are asked for, 1 to %d can be".formatted(wanted.bands(), MOST_BANDS));
        }
        Length girth = wanted.girth();
        if (girth == null && tree.girthMm() != null) {
            girth = Length.ofMm(tree.girthMm());
        }
        if (girth == null || !girth.isPositive()) {
            throw new CutPlanRefused.TreeUnfit(wanted.treeId(), "nobody measured its girth; measure it or give one");
        }
        PieceList list = pieces.apply(girth);
        return new PlannedTree(
                wanted.treeId(),
                new SiteId(tree.siteId()),
                tree.tag(),
                girth,
                wanted.bands(),
                list.pins().count() * wanted.bands(),
                list.others().count() * wanted.bands());
    }
}

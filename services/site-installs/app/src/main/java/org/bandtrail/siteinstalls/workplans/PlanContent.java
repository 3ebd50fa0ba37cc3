package org.bandtrail.siteinstalls.workplans;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.jspecify.annotations.Nullable;

/**
 * What is planned.
 *
 * @param day first day of work
 * @param lastDay last day, the same for a plan of one day
 * @param crew who does it
 * @param depot where the material comes from
 * @param pest EPPO code of what the bands are against, null if not said
 * @param programme code of the programme, null if not said
 * @param device code of the kind of device
 * @param materials which items
 * @param policyVersion the cut-length policy the lengths follow
 * @param putUpFrom first day on which the bands make sense, as the lead says, null if not said
 * @param putUpUntil last such day, null if not said
 * @param trees in the order of the walk
 * @param note what else the crew should know, may be empty
 */
public record PlanContent(
        LocalDate day,
        LocalDate lastDay,
        CrewId crew,
        DepotId depot,
        @Nullable String pest,
        @Nullable String programme,
        String device,
        PlanMaterials materials,
        int policyVersion,
        @Nullable LocalDate putUpFrom,
        @Nullable LocalDate putUpUntil,
        List<PlanTree> trees,
        String note) {

    /** Keeps its own copy of the trees. */
    public PlanContent {
        trees = List.copyOf(trees);
    }

    /** What it needs by material: tape, mesh, fasteners. */
    public List<PlanNeed> needs() {
        List<PlanNeed> needs = new ArrayList<>();
        add(needs, materials.tape(), MaterialKind.TAPE, PlanTree::tape);
        add(needs, materials.mesh(), MaterialKind.MESH, PlanTree::mesh);
        addCounted(needs, materials.fastener(), PlanTree::fasteners);
        addCounted(needs, materials.other(), PlanTree::others);
        return List.copyOf(needs);
    }

    private void addCounted(List<PlanNeed> needs, @Nullable MaterialCode material, Function<PlanTree, Pieces> each) {
        long all = trees.stream().mapToLong(tree -> each.apply(tree).count()).sum();
        if (material != null && all > 0) {
            needs.add(new PlanNeed(material, MaterialKind.FASTENER, all, 0, all));
        }
    }

    /** Bands on all trees together. */
    public int bands() {
        return trees.stream().mapToInt(PlanTree::bands).sum();
    }

    private void add(
            List<PlanNeed> needs, @Nullable MaterialCode material, MaterialKind kind, Function<PlanTree, Length> each) {
        List<PlanTree> with =
                trees.stream().filter(tree -> each.apply(tree).isPositive()).toList();
        if (material == null || with.isEmpty()) {
            return;
        }
        long all = 0;
        long longest = 0;
        long pieces = 0;
        for (PlanTree tree : with) {
            long one = each.apply(tree).mm();
            all = Math.addExact(all, one * tree.bands());
            longest = Math.max(longest, one);
            pieces += tree.bands();
        }
        needs.add(new PlanNeed(material, kind, all, longest, pieces));
    }
}

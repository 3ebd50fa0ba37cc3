package org.bandtrail.siteinstalls.planmaking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import net.sf.geographiclib.Geodesic;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.consents.Activity;
import org.bandtrail.siteinstalls.consents.Consents;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.siteinstalls.devices.PieceList;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.policies.CutPolicyVersion;
import org.bandtrail.siteinstalls.sites.Sites;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.bandtrail.siteinstalls.workplans.PlanContent;
import org.bandtrail.siteinstalls.workplans.PlanTree;
import org.bandtrail.siteinstalls.workplans.WorkPlanRefused;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Turns a wish into the content of a plan, or refuses it with what to do. */
@Component
class PlanMaking {
    private final Trees trees;
    private final Consents consents;
    private final CutPolicies policies;
    private final Sites registered;
    private final DeviceKinds kinds;

    PlanMaking(Trees trees, Consents consents, CutPolicies policies, Sites registered, DeviceKinds kinds) {
        this.trees = trees;
        this.consents = consents;
        this.policies = policies;
        this.registered = registered;
        this.kinds = kinds;
    }

    /**
     * Reckons the pieces of the device by the policy of the day, the programme and the pest.
     *
     * @throws IllegalArgumentException if there is no such device, or an item does not fit its parts
     * @throws WorkPlanRefused.TreesNotReady if a tree is not registered, gone or not measured
     * @throws org.bandtrail.siteinstalls.consents.ConsentRefused if no consent holds at a site on one of the days
     */
    PlanContent content(PlanWish wish) {
        Map<TreeId, TreeView> known = trees.registered(
                wish.trees().stream().map(PlanWish.Line::treeId).toList());
        requireReady(wish.trees().stream().map(PlanWish.Line::treeId).toList(), known);
        requireLeave(sites(known.values()), wish.day(), wish.until(), wish.pest());
        CutPolicyVersion policy = policies.on(wish.day(), wish.programme(), wish.pest());
        DeviceKind kind = kinds.chosen(wish.device(), policy.values());
        kind.checkItem(MaterialKind.TAPE, wish.tape() != null);
        kind.checkItem(MaterialKind.MESH, wish.mesh() != null);
        List<PlanTree> planned = new ArrayList<>();
        for (PlanWish.Line line : wish.trees()) {
            TreeView tree = Objects.requireNonNull(known.get(line.treeId()));
            planned.add(planned(line, tree, wish, kind, policy));
        }
        return new PlanContent(
                wish.day(),
                wish.until(),
                wish.crewId(),
                wish.depotId(),
                wish.pest(),
                wish.programme(),
                kind.code(),
                wish.materials(),
                policy.version(),
                wish.putUpFrom(),
                wish.putUpUntil(),
                wish.shortest() ? inShortOrder(planned, known) : planned,
                Objects.requireNonNullElse(wish.note(), "").strip());
    }

    /** Looks once more, before a plan is agreed, whether its trees stand and its consents hold. */
    void requireStillReady(Collection<TreeId> planned, LocalDate day, LocalDate lastDay, @Nullable String pest) {
        Map<TreeId, TreeView> known = trees.registered(planned);
        requireReady(planned, known);
        requireLeave(sites(known.values()), day, lastDay, pest);
    }

    private static void requireReady(Collection<TreeId> wanted, Map<TreeId, TreeView> known) {
        List<String> why = new ArrayList<>();
        for (TreeId tree : wanted) {
            TreeView view = known.get(tree);
            if (view == null) {
                why.add("Tree [%s] is not registered. Register it first.".formatted(tree));
            } else if (view.mergedInto() != null) {
                why.add("Tree [%s] is the same tree as [%s]. Plan that one instead."
                        .formatted(tree, view.mergedInto()));
            } else if (view.goneAt() != null) {
                why.add("Tree [%s] is gone: %s. Take it off the list.".formatted(tree, view.goneHow()));
            } else if (view.girthMm() == null) {
                why.add("Tree [%s] has no girth, so no piece can be cut for it. Measure it first.".formatted(tree));
            }
        }
        if (!why.isEmpty()) {
            throw new WorkPlanRefused.TreesNotReady(why);
        }
    }

    private static TreeSet<String> sites(Collection<TreeView> views) {
        TreeSet<String> sites = new TreeSet<>();
        views.forEach(view -> sites.add(view.siteId()));
        return sites;
    }

    private void requireLeave(Collection<String> sites, LocalDate day, LocalDate lastDay, @Nullable String pest) {
        for (String site : sites) {
            registered
                    .closedOn(new SiteId(site))
                    .filter(since -> !since.isAfter(lastDay))
                    .ifPresent(since -> {
                        throw new WorkPlanRefused.SiteIsClosed(new SiteId(site), since, lastDay);
                    });
            for (LocalDate each = day; !each.isAfter(lastDay); each = each.plusDays(1)) {
                consents.mustHold(new SiteId(site), each, Activity.BANDS, pest);
            }
        }
    }

    private static PlanTree planned(
            PlanWish.Line line, TreeView tree, PlanWish wish, DeviceKind kind, CutPolicyVersion policy) {
        Length girth = Length.ofMm(Objects.requireNonNull(tree.girthMm()));
        PieceList pieces = PieceList.of(kind, girth, policy.values(), wish.steps());
        return new PlanTree(
                line.treeId(),
                new SiteId(tree.siteId()),
                girth,
                line.count(),
                pieces.cutFrom(MaterialKind.TAPE),
                wish.mesh() == null ? Length.ZERO : pieces.cutFrom(MaterialKind.MESH),
                counted(wish.fastener(), pieces.pins(), line),
                counted(wish.other(), pieces.others(), line));
    }

    private static Pieces counted(@Nullable MaterialCode item, Pieces each, PlanWish.Line line) {
        return item == null ? Pieces.ZERO : Pieces.of(each.count() * line.count());
    }

    /** Trees without a position come last, as listed. */
    private static List<PlanTree> inShortOrder(List<PlanTree> planned, Map<TreeId, TreeView> known) {
        List<PlanTree> there = planned.stream()
                .filter(tree -> placed(known.get(tree.treeId())))
                .toList();
        List<TreeView> views = there.stream()
                .map(tree -> Objects.requireNonNull(known.get(tree.treeId())))
                .toList();
        List<PlanTree> order = new ArrayList<>();
        for (int stop : Walk.oneWay(there.size(), (one, other) -> metres(views.get(one), views.get(other)))) {
            order.add(there.get(stop));
        }
        planned.stream().filter(tree -> !placed(known.get(tree.treeId()))).forEach(order::add);
        return order;
    }

    private static boolean placed(@Nullable TreeView tree) {
        return tree != null && tree.lat() != null && tree.lon() != null;
    }

    /** Along the ellipsoid WGS 84, by C. F. F. Karney's algorithm. */
    private static double metres(TreeView one, TreeView other) {
        return Geodesic.WGS84.Inverse(
                        Objects.requireNonNull(one.lat()).doubleValue(),
                        Objects.requireNonNull(one.lon()).doubleValue(),
                        Objects.requireNonNull(other.lat()).doubleValue(),
                        Objects.requireNonNull(other.lon()).doubleValue())
                .s12;
    }
}

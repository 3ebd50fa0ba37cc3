package org.bandtrail.siteinstalls.cutplans;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.DrawPlan;
import org.bandtrail.siteinstalls.cuttingstock.CuttingJob;
import org.bandtrail.siteinstalls.cuttingstock.CuttingPlan;
import org.bandtrail.siteinstalls.cuttingstock.CuttingPlanner;
import org.bandtrail.siteinstalls.cuttingstock.CuttingRules;
import org.bandtrail.siteinstalls.cuttingstock.Patience;
import org.bandtrail.siteinstalls.cuttingstock.Piece;
import org.bandtrail.siteinstalls.cuttingstock.Stock;
import org.bandtrail.siteinstalls.depotstock.DepotStock;
import org.bandtrail.siteinstalls.depotstock.ReelThere;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.siteinstalls.devices.PieceList;
import org.bandtrail.siteinstalls.policies.CutLengths;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.policies.CutPolicyVersion;
import org.springframework.stereotype.Component;

/**
 * Works a plan out: pieces from the kind of device, girths and policy, reels from what lies in the depot, the rest is the planner's. Reels
 * that a kit keeps, that another agreed plan binds, or whose adhesive does not last until the day are left out. A rest
 * counts as usable from the length of the shortest band the policy allows.
 */
@Component
final class CutPlanning {
    private final TreesToCut trees;
    private final CutPolicies policies;
    private final DeviceKinds kinds;
    private final DepotStock stock;
    private final CutPlans plans;
    private final SearchClock searchClock;
    private final Clock clock;

    CutPlanning(
            TreesToCut trees,
            CutPolicies policies,
            DeviceKinds kinds,
            DepotStock stock,
            CutPlans plans,
            SearchClock searchClock,
            Clock clock) {
        this.trees = trees;
        this.policies = policies;
        this.kinds = kinds;
        this.stock = stock;
        this.plans = plans;
        this.searchClock = searchClock;
        this.clock = clock;
    }

    /**
     * The command that keeps the plan.
     *
     * @throws IllegalArgumentException if there is no such device, or an item does not fit its parts
     * @throws CutPlanRefused if a tree is unfit or the depot has no reel of a material
     */
    DrawPlan plan(CutOrder order, PersonId by) {
        CutUse use = order.use();
        CutPolicyVersion policy = policies.on(order.day(), use.programme(), use.pest());
        CutLengths lengths = policy.values();
        DeviceKind kind = kinds.chosen(use.device(), lengths);
        Function<Length, PieceList> pieces = girth -> PieceList.of(kind, girth, lengths, order.measure());
        List<PlannedTree> planned = trees.of(order, pieces);
        List<MaterialCuts> materials = new ArrayList<>();
        for (MaterialKind material : List.of(MaterialKind.TAPE, MaterialKind.MESH)) {
            MaterialCode item = order.item(material);
            kind.checkItem(material, item != null);
            if (item != null) {
                UnaryOperator<Length> length = girth -> pieces.apply(girth).cutFrom(material);
                materials.add(cuts(order, planned, item, material, length, lengths));
            }
        }
        Instant now = clock.instant();
        return new DrawPlan(
                order.planId(),
                order.depot(),
                order.day(),
                order.measure(),
                use.with(kind.code()),
                policy.version(),
                planned,
                materials,
                by,
                new Occurred(now, now));
    }

    private MaterialCuts cuts(
            CutOrder order,
            List<PlannedTree> planned,
            MaterialCode material,
            MaterialKind kind,
            UnaryOperator<Length> length,
            CutLengths lengths) {
        Map<String, PlannedPiece> pieces = new HashMap<>();
        List<Piece> asked = new ArrayList<>();
        for (PlannedTree tree : planned) {
            for (int position = 1; position <= tree.bands(); position++) {
                PlannedPiece piece = new PlannedPiece(tree.treeId(), position, length.apply(tree.girth()));
                pieces.put(piece.key(), piece);
                asked.add(new Piece(piece.key(), piece.length().mm()));
            }
        }
        Map<String, ReelThere> reels = new HashMap<>();
        List<Stock> there = reels(order, material, reels);
        long newReel =
                reels.values().stream().mapToLong(ReelThere::receivedMm).max().orElse(0);
        Length usableFrom = length.apply(lengths.girth().minimum());
        CuttingJob job = new CuttingJob(
                asked,
                there,
                new CuttingRules(order.blade().mm(), usableFrom.mm(), newReel),
                order.planId().value().hashCode());
        CuttingPlan found = CuttingPlanner.plan(job, Patience.of(searchClock::nanos, order.patience()));
        return MaterialCutsOf.plan(found, material, kind, usableFrom, pieces, reels);
    }

    private List<Stock> reels(CutOrder order, MaterialCode material, Map<String, ReelThere> reels) {
        Instant now = clock.instant();
        List<ReelThere> free = stock.reels(order.depot(), material).stream()
                .filter(reel -> reel.free(now) && reel.goodOn(order.day()))
                .toList();
        Set<ReelId> bound = plans.bound(free.stream().map(ReelThere::reelId).toList());
        List<ReelThere> usable =
                free.stream().filter(reel -> !bound.contains(reel.reelId())).toList();
        if (usable.isEmpty()) {
            throw new CutPlanRefused.NoReels(order.depot(), material, order.day());
        }
        usable.forEach(reel -> reels.put(reel.reelId().value(), reel));
        return IntStream.range(0, usable.size())
                .mapToObj(place -> {
                    ReelThere reel = usable.get(place);
                    return new Stock(reel.reelId().value(), reel.lengthMm(), reel.opened(), reel.expires(), place);
                })
                .toList();
    }
}

package org.bandtrail.siteinstalls.cutplans;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.cuttingstock.CuttingPlan;
import org.bandtrail.siteinstalls.cuttingstock.Piece;
import org.bandtrail.siteinstalls.cuttingstock.Purchase;
import org.bandtrail.siteinstalls.cuttingstock.ReelCuts;
import org.bandtrail.siteinstalls.depotstock.ReelThere;

/** Says what the planner found in the words of a plan: pieces with their trees, reels with their bins. */
final class MaterialCutsOf {
    private MaterialCutsOf() {}

    static MaterialCuts plan(
            CuttingPlan found,
            MaterialCode material,
            MaterialKind kind,
            Length usableFrom,
            Map<String, PlannedPiece> pieces,
            Map<String, ReelThere> reels) {
        return new MaterialCuts(
                material,
                kind,
                usableFrom,
                found.reels().stream().map(cuts -> reel(cuts, pieces, reels)).toList(),
                pieces(found.uncut(), pieces),
                pieces(found.tooLong(), pieces),
                toBuy(found.toBuy()),
                new MaterialCuts.Quality(
                        Length.ofMm(found.scrapMm()),
                        Length.ofMm(Math.min(found.scrapMm(), found.bound().weighedScrapMm())),
                        found.newReels(),
                        found.proven(),
                        found.fewestNewReels(),
                        found.cutOff()));
    }

    private static PlannedReel reel(ReelCuts cuts, Map<String, PlannedPiece> pieces, Map<String, ReelThere> reels) {
        ReelThere reel = Objects.requireNonNull(reels.get(cuts.stockId()));
        return new PlannedReel(
                reel.reelId(),
                reel.bin(),
                reel.opened(),
                Length.ofMm(reel.lengthMm()),
                pieces(cuts.inOrder(), pieces),
                Length.ofMm(cuts.leftoverMm()),
                Length.ofMm(cuts.scrapMm()),
                Length.ofMm(cuts.bladeMm()));
    }

    private static List<PlannedPiece> pieces(List<Piece> found, Map<String, PlannedPiece> pieces) {
        return found.stream()
                .map(piece -> Objects.requireNonNull(pieces.get(piece.id())))
                .toList();
    }

    private static MaterialCuts.ToBuy toBuy(Purchase purchase) {
        return new MaterialCuts.ToBuy(
                purchase.newReels(),
                Length.ofMm(purchase.newReelMm()),
                purchase.longReels(),
                Length.ofMm(purchase.longestMm()));
    }
}

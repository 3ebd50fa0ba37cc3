package org.bandtrail.siteinstalls.cutplans;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;

/**
 * The part of a plan that is cut from one material.
 *
 * @param material its code
 * @param kind tape or mesh
 * @param usableFrom a rest at least this long goes back to the depot
 * @param reels the reels that are cut, the oldest first
 * @param uncut pieces the depot's reels do not suffice for
 * @param tooLong pieces longer than any reel of the depot
 * @param toBuy what is missing for both
 * @param quality how good the plan is
 */
public record MaterialCuts(
        MaterialCode material,
        MaterialKind kind,
        @JsonProperty("usableFromMm") Length usableFrom,
        List<PlannedReel> reels,
        List<PlannedPiece> uncut,
        List<PlannedPiece> tooLong,
        ToBuy toBuy,
        Quality quality) {

    /** Keeps its own copies. */
    public MaterialCuts {
        reels = List.copyOf(reels);
        uncut = List.copyOf(uncut);
        tooLong = List.copyOf(tooLong);
    }

    /**
     * What to buy for the pieces that cannot be cut.
     *
     * @param reels new reels of {@code reelLength}
     * @param reelLength length of one of them, zero if none was ever received
     * @param longReels reels each for one piece that no reel is long enough for
     * @param longest the longest of those pieces, zero if there is none
     */
    public record ToBuy(
            int reels,
            @JsonProperty("reelLengthMm") Length reelLength,
            int longReels,
            @JsonProperty("longestMm") Length longest) {
        /** Whether the depot serves the whole list. */
        public boolean nothing() {
            return reels == 0 && longReels == 0;
        }
    }

    /**
     * How good a plan is.
     *
     * @param loss scrap: rests too short to be of use
     * @param leastLoss the least scrap any plan makes
     * @param newReels new reels opened
     * @param proven no plan cuts more pieces, and none that cuts as many makes less scrap
     * @param fewestNewReels it is proven, too, that no such plan opens fewer new reels
     * @param cutOff the search was ended by its time
     */
    public record Quality(
            @JsonProperty("lossMm") Length loss,
            @JsonProperty("leastLossMm") Length leastLoss,
            int newReels,
            boolean proven,
            boolean fewestNewReels,
            boolean cutOff) {}

    /** Every piece of this material, cut or not. */
    Stream<PlannedPiece> pieces() {
        return Stream.of(reels.stream().flatMap(reel -> reel.pieces().stream()), uncut.stream(), tooLong.stream())
                .flatMap(pieces -> pieces);
    }

    /** Whether everything asked for is cut. */
    public boolean serves() {
        return uncut.isEmpty() && tooLong.isEmpty();
    }

    /**
     * Checks the law of a plan.
     *
     * @return what is wrong in words, empty if nothing is
     */
    String wrong() {
        Set<ReelId> used = new HashSet<>();
        for (PlannedReel reel : reels) {
            if (!used.add(reel.reelId())) {
                return "reel %s is cut twice".formatted(reel.reelId());
            }
            if (!reel.addsUp()) {
                return "pieces, leftover, scrap and blade of reel %s are not its %s"
                        .formatted(reel.reelId(), reel.length());
            }
        }
        Set<String> keys = new HashSet<>();
        return pieces().map(PlannedPiece::key)
                .filter(key -> !keys.add(key))
                .findFirst()
                .map(key -> "the piece for %s is there twice".formatted(key))
                .orElse("");
    }
}

package org.bandtrail.siteinstalls.cutplans;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.jspecify.annotations.Nullable;

/**
 * What comes off one reel. Always: length = pieces + leftover + scrap + blade.
 *
 * @param reelId the reel
 * @param bin where it lay when the plan was drawn, null if loose
 * @param opened whether something was cut off it before
 * @param length on it when the plan was drawn, less what other agreed plans take
 * @param pieces in the order of the crew's walk, at least one
 * @param leftover usable rest that goes back to the depot
 * @param scrap rest too short to be of use
 * @param blade what the cuts take together
 */
public record PlannedReel(
        ReelId reelId,
        @Nullable String bin,
        boolean opened,
        @JsonProperty("lengthMm") Length length,
        List<PlannedPiece> pieces,
        @JsonProperty("leftoverMm") Length leftover,
        @JsonProperty("scrapMm") Length scrap,
        @JsonProperty("bladeMm") Length blade) {

    /** Keeps its own copy. */
    public PlannedReel {
        pieces = List.copyOf(pieces);
    }

    /** The pieces together. */
    public Length piecesTogether() {
        return pieces.stream().map(PlannedPiece::length).reduce(Length.ZERO, Length::plus);
    }

    /** Whether the parts make the whole. */
    boolean addsUp() {
        return length.equals(piecesTogether().plus(leftover).plus(scrap).plus(blade));
    }
}

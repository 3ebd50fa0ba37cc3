package org.bandtrail.siteinstalls.guards;

import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.cutting.GuardStandOff;
import org.jspecify.annotations.Nullable;

/**
 * A sheet of mesh closed round a trunk.
 *
 * @param length of the sheet, above 0
 * @param seam by how much its ends overlap, at least 0
 * @param girth of the trunk, above 0
 * @param width of the sheet, null if nobody told
 * @param tapeWidth width of the tape below it, null if nobody told
 * @param opening of the mesh: of a square its side, of a hexagon the distance of two sides; what passes is as wide as
 *     that either way. Null if nobody told
 * @param closedBelow whether its lower edge is bent in to the bark, null if nobody said
 */
public record GuardSheet(
        Length length,
        Length seam,
        Length girth,
        @Nullable Length width,
        @Nullable Length tapeWidth,
        @Nullable Length opening,
        @Nullable Boolean closedBelow) {

    /** How far it stands off the trunk, see {@link GuardStandOff}. Zero or less: it touches the tape. */
    public Length standOff() {
        return GuardStandOff.of(length, seam, girth);
    }

    /**
     * The shortest sheet that stands off so far: L = g + s + 2 pi d, rounded up to whole millimetres. Source: the
     * stand-off solved for the length.
     */
    public Length lengthFor(Length standOff) {
        return Length.ofMm((long) Math.ceil(girth.mm() + seam.mm() + 2 * Math.PI * standOff.mm()));
    }

    /** By how much it is wider than the tape, null if one of the widths is not known; negative if it is narrower. */
    public @Nullable Length wider() {
        return width == null || tapeWidth == null || !width.isPositive() ? null : width.minus(tapeWidth);
    }
}
